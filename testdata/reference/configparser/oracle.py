"""What Python's configparser makes of a configuration in sections style.

One case a line on standard input, one answer a line on standard output:
  {"main": "printer.cfg", "files": {"printer.cfg": "..."}}
  {"options": [["section.key", "value"], ...]}  or  {"error": [file, line]}
Text is written with one character for each byte (Latin-1), so that any bytes
fit into JSON.

The text is flattened as the style defines it: what follows a # is cut from
each line; an [include PATTERN] that starts a line is replaced by the files
that match it, sorted; what stands between two includes is parsed as one text.
"""
import configparser
import fnmatch
import io
import json
import posixpath
import sys


class Refused(Exception):
    pass


def text(raw):
    data = raw.encode("latin-1").decode("utf-8", "surrogateescape")
    return io.TextIOWrapper(io.BytesIO(data.encode("utf-8", "surrogateescape")),
                            encoding="utf-8", errors="surrogateescape").read()


def raw(value):
    return value.encode("utf-8", "surrogateescape").decode("latin-1")


def matching(files, pattern):
    wanted = pattern.split("/")
    found = []
    for name in files:
        parts = name.split("/")
        if len(parts) == len(wanted) and all(
                fnmatch.fnmatchcase(p, w) and (not p.startswith(".") or w.startswith("."))
                for p, w in zip(parts, wanted)):
            found.append(name)
    return sorted(found)


class Reader:
    def __init__(self, files):
        self.files = files
        self.parser = configparser.RawConfigParser(strict=False, inline_comment_prefixes=(";", "#"))

    def piece(self, lines, name, first):
        # Empty lines in front keep the line numbers true.
        source = io.StringIO("\n".join([""] * first + lines))
        try:
            self.parser.read_file(source, name)
        except configparser.MissingSectionHeaderError as e:
            raise Refused(name, e.lineno)
        except configparser.ParsingError as e:
            raise Refused(name, e.errors[0][0])

    def file(self, name, opened):
        lines, first = [], 0
        for i, line in enumerate(text(self.files[name]).split("\n")):
            line = line.partition("#")[0]
            found = configparser.RawConfigParser.SECTCRE.match(line)
            if not found or not found.group("header").startswith("include "):
                lines.append(line)
                continue
            self.piece(lines, name, first)
            lines, first = [], i + 1
            pattern = found.group("header")[len("include "):].strip()
            pattern = posixpath.normpath(posixpath.join(posixpath.dirname(name), pattern))
            if any(c in pattern for c in "*?["):
                names = matching(self.files, pattern)
            else:
                names = [pattern]
            for other in names:
                if other not in self.files or other in opened + [name]:
                    raise Refused(name, i + 1)
                self.file(other, opened + [name])
        self.piece(lines, name, first)

    def options(self):
        found = [("DEFAULT." + key, value) for key, value in self.parser.defaults().items()]
        for section in self.parser.sections():
            found += [(section + "." + key, value) for key, value in self.parser.items(section)]
        return [[raw(name), raw(value)] for name, value in sorted(found, key=lambda f: (raw(f[0]), raw(f[1])))]


def answer(case):
    reader = Reader(case["files"])
    try:
        reader.file(case["main"], [])
    except Refused as e:
        return {"error": list(e.args)}
    return {"options": reader.options()}


for line in sys.stdin:
    print(json.dumps(answer(json.loads(line))), flush=True)
