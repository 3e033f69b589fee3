// What a reader sees of the page in a window of this size. The value is
// {below: [what of the first screen ends below the window or right of it],
//  wide: the page is wider than the window, wider: [what sticks out of it],
//  uncued: [what scrolls sideways without saying so, or says so and does not],
//  oneWay: [links that lead nowhere, or that do not lead back], links: number}.
(() => {
  const all = (selector, of = document) => [...of.querySelectorAll(selector)];
  const name = (el) => `<${el.localName} id="${el.id}" class="${el.className}"> ${el.textContent.trim().slice(0, 40)}`;
  const shown = (el) => el.checkVisibility({ contentVisibilityAuto: true });
  const out = { below: [], wide: false, wider: [], uncued: [], oneWay: [], links: 0 };

  const first = ['.lead', '.verdict', '.worst > li', '.cautions > li', '#size + p', 'nav a'];
  for (const selector of first) {
    const found = all(selector, document.querySelector('header'));
    if (!found.length) out.below.push('there is no ' + selector);
    for (const el of found) {
      const box = el.getBoundingClientRect();
      if (!shown(el) || box.bottom > innerHeight || box.right > innerWidth) out.below.push(name(el));
    }
  }

  const root = document.documentElement;
  out.wide = root.scrollWidth > root.clientWidth;
  for (const el of all('body *')) {
    const style = getComputedStyle(el);
    if (!shown(el) || el.closest('svg') && el.localName !== 'svg' || el.closest('.hidden')) continue;
    const scrolls = el.scrollWidth > el.clientWidth + 1 && style.overflowX === 'auto';
    const cue = getComputedStyle(el, '::before').content.includes('scrolls sideways');
    if (scrolls !== cue || scrolls && el.tabIndex !== 0) out.uncued.push(name(el));
    if (!el.closest('.scroll') && el.getBoundingClientRect().right > root.clientWidth + 1) out.wider.push(name(el));
  }

  const leads = (from, to) => all('a', from).some((a) => a.getAttribute('href') === '#' + to.id);
  for (const a of all('a')) {
    out.links++;
    const to = document.getElementById(a.getAttribute('href').slice(1));
    const from = a.closest('figure, article.finding, .diff tr');
    const pair = to && from && to.matches('figure, article.finding, .diff tr');
    if (!to || pair && !leads(to, from)) out.oneWay.push(a.getAttribute('href') + ': ' + name(a));
  }
  for (const el of all('figure, .diff tr[id]')) {
    if (!all('a[href^="#"]', el).length && el.closest('.printer[aria-labelledby^="p"]')) out.oneWay.push('no way back from ' + name(el));
  }
  return out;
})()
