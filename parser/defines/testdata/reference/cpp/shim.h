// The style's own tests, written out for GNU cpp: what the reader under test
// has built in. An option is on when it is empty, 1, 0x1 or true.
#define s_join_(a, b) a##b
#define s_join(a, b) s_join_(a, b)
#define s_second_(a, b, ...) b
#define s_second(...) s_second_(__VA_ARGS__)
#define s_is_v_ ~, 1
#define s_is_v_1 ~, 1
#define s_is_v_0x1 ~, 1
#define s_is_v_true ~, 1
#define s_probe(x) s_second(x, 0, 0)
#define s_on(o) s_probe(s_join(s_is_, s_join(v_, o)))
#define s_off(o) (!s_on(o))

#define s_count_(a, b, c, d, e, n, ...) n
#define s_count(...) s_count_(__VA_ARGS__, 5, 4, 3, 2, 1)
#define s_all1(t, op, a) t(a)
#define s_all2(t, op, a, ...) t(a) op s_all1(t, op, __VA_ARGS__)
#define s_all3(t, op, a, ...) t(a) op s_all2(t, op, __VA_ARGS__)
#define s_all4(t, op, a, ...) t(a) op s_all3(t, op, __VA_ARGS__)
#define s_all5(t, op, a, ...) t(a) op s_all4(t, op, __VA_ARGS__)
#define s_do(t, op, ...) (s_join(s_all, s_count(__VA_ARGS__))(t, op, __VA_ARGS__))

#define ENABLED(...) s_do(s_on, &&, __VA_ARGS__)
#define DISABLED(...) s_do(s_off, &&, __VA_ARGS__)
#define ALL(...) s_do(s_on, &&, __VA_ARGS__)
#define BOTH(a, b) s_do(s_on, &&, a, b)
#define NONE(...) s_do(s_off, &&, __VA_ARGS__)
#define ANY(...) s_do(s_on, ||, __VA_ARGS__)
#define EITHER(a, b) s_do(s_on, ||, a, b)
#define COUNT_ENABLED(...) s_do(s_on, +, __VA_ARGS__)
#define MANY(...) (s_do(s_on, +, __VA_ARGS__) > 1)

#define s_pick_0(a, b) b
#define s_pick_1(a, b) a
#define TERN(o, a, b) s_join(s_pick_, s_on(o))(a, b)
#define TERN0(o, a) s_join(s_pick_, s_on(o))(a, 0)
#define TERN1(o, a) s_join(s_pick_, s_on(o))(a, 1)
#define TERN_(o, a) s_join(s_pick_, s_on(o))(a, )
#define IF_ENABLED(o, a) s_join(s_pick_, s_on(o))(a, )
#define IF_DISABLED(o, a) s_join(s_pick_, s_on(o))(, a)
#define WITHIN(v, l, h) ((v) >= (l) && (v) <= (h))
#define PIN_EXISTS(p) (defined(p##_PIN) && p##_PIN >= 0)
#define ANY_PIN(a, b) (PIN_EXISTS(a) || PIN_EXISTS(b))
