"""The TextMate grammar: VS Code, and every other program that reads such grammars."""

import json
import re

from tables import longest_first, unit_regex

# what may not follow a word: more of the word. A single dash is a sign (`a - b`).
END = r"(?![A-Za-z0-9_µμΩ\x{2126}λ°]|-[A-Za-z0-9_]|\.[A-Za-z0-9_])"
BEFORE = r"(?<![A-Za-z0-9_µμΩ\x{2126}λ°.]|[A-Za-z0-9_]-)"
NAME = r"[A-Za-z_][A-Za-z0-9_]*(?:-[A-Za-z0-9_]+)*(?:\.[A-Za-z0-9_]+(?:-[A-Za-z0-9_]+)*)*"
DIGIT_NAME = r"[0-9][A-Za-z0-9_]*(?:\.[A-Za-z0-9_]+)*(?:-[A-Za-z0-9_]+(?:\.[A-Za-z0-9_]+)*)*"
# of these, the ones that cannot be a number: `7-16-pair`, but not `2`
DIGITS_AND_MORE = r"[0-9]+(?:\.[0-9]+)*[A-Za-z_-][A-Za-z0-9_]*(?:[.-][A-Za-z0-9_]+)*"
NUMBER = r"[0-9]+(?:\.[0-9]+)?(?::[0-9]+(?:\.[0-9]+)?|[eE][+-]?[0-9]+)?"
# `a -b` has a sign, `a - b` a minus, `a-b` is a name
SIGN = r"(?:(?<=[\s,=({;+*/±])|^)[-+−–](?=[0-9])"


def alternatives(words):
    return "(?:" + "|".join(re.escape(w).replace(r"\-", "-") for w in longest_first(words)) + ")"


def units(t):
    """All spellings, each with what must not follow it."""
    signs = [s for s in t["unit_symbols"] if not re.match(r"[A-Za-z]", s)]
    words = [s for s in t["unit_symbols"] if s not in signs]

    def listed(symbols):
        return "|".join(unit_regex(s, lambda p: re.escape(p).replace(r"\-", "-")) for s in longest_first(symbols))

    return f"(?:(?:{listed(words)}){END}|(?:{listed(s for s in signs if s != '%')}){END}|%)"


def rule(scope, match, **captures):
    out = {"match": match}
    if scope:
        out["name"] = f"{scope}.downlead"
    if captures:
        out["captures"] = {k.lstrip("_"): {"name": f"{v}.downlead"} for k, v in captures.items()}
    return out


def include(*names):
    return [{"include": f"#{n}"} for n in names]


def grammar(t):
    """The whole grammar as a dictionary."""
    unit = units(t)
    lengths = alternatives(s for s in t["length_symbols"])
    start = r"(?:^|(?<=[{};]))[ \t]*"

    def statement(group, scope):
        return rule("", rf"{start}({alternatives(t['groups'][group])}){END}", _1=scope)

    repository = {
        "comment": {"patterns": [
            {"name": "comment.line.double-slash.downlead", "begin": "//", "end": "$",
             "beginCaptures": {"0": {"name": "punctuation.definition.comment.downlead"}}}]},
        "string": {"patterns": [
            rule("string.quoted.double", r'"[^"]*"'),
            rule("invalid.illegal.unclosed-string", r'"[^"]*$')]},
        "statement": {"patterns": [
            # what is defined has a name, a part has a tag: both are shown as such
            rule("", rf"{start}(band)[ \t]+([0-9]+(?:\.[0-9]+)?{lengths}|{NAME}){END}",
                 _1="storage.type", _2="entity.name.type.band"),
            rule("", rf"{start}({alternatives(w for w in t['groups']['definition'] if w not in ('band', 'use'))})[ \t]+({NAME}|{DIGITS_AND_MORE}){END}",
                 _1="storage.type", _2="entity.name.type"),
            rule("", rf"{start}({alternatives(t['groups']['part'])})[ \t]+(?!{alternatives(t['inner_words'])}{END})({NAME}){END}",
                 _1="support.class.part", _2="entity.name.tag"),
            statement("definition", "storage.type"),
            statement("part", "support.class.part"),
            statement("chain", "keyword.control"),
            statement("property", "support.function.property"),
            rule("", rf"{start}({NAME}){END}", _1="entity.name.tag"),
        ]},
        "on": {"patterns": [
            # after `on` stand bands, and their names may look like lengths
            {"begin": rf"{BEFORE}(on){END}", "end": r"(?=[{};]|//|$)",
             "beginCaptures": {"1": {"name": "keyword.operator.word.downlead"}},
             "patterns": [
                 rule("entity.name.type.band", rf"{BEFORE}[0-9]+(?:\.[0-9]+)?{lengths}{END}"),
                 *include("values", "string", "punctuation")]}]},
        "values": {"patterns": [
            rule("constant.numeric.date", rf"{BEFORE}[0-9]{{4}}-[0-9]{{2}}(?:-[0-9]{{2}})?{END}"),
            rule("constant.numeric.angle", r"[0-9]+°[ ]?[0-9]+(?:\.[0-9]+)?′(?:[ ]?[0-9]+(?:\.[0-9]+)?″)?"),
            rule("", rf"({SIGN})?{BEFORE}({NUMBER})[ \t]*({unit})",
                 _1="keyword.operator.sign", _2="constant.numeric", _3="keyword.other.unit"),
            rule("", rf"({SIGN})?{BEFORE}({NUMBER}){END}", _1="keyword.operator.sign", _2="constant.numeric"),
            rule("", rf"{BEFORE}(per)[ \t]+(sqrt\([A-Za-z]+\)|√[A-Za-z]+)",
                 _1="keyword.operator.word", _2="keyword.other.unit"),
            rule("keyword.operator.word", rf"{BEFORE}{alternatives(t['inner_words'])}{END}"),
            rule("variable.other", rf"{BEFORE}(?:{NAME}|{DIGIT_NAME})"),
        ]},
        "punctuation": {"patterns": [
            rule("punctuation.separator.comma", ","),
            rule("punctuation.terminator.statement", ";"),
            rule("punctuation.section.block", "[{}]"),
            rule("punctuation.section.parens", "[()]"),
            rule("keyword.operator.tolerance", r"±|\+/-"),
            rule("keyword.operator", r"[=+*/^−–-]"),
        ]},
    }
    return {
        "comment": t["comment"],
        "name": "Downlead",
        "scopeName": "source.downlead",
        "fileTypes": ["downlead"],
        "patterns": include("comment", "statement", "on", "values", "string", "punctuation"),
        "repository": repository,
    }


def text(t):
    return json.dumps(grammar(t), ensure_ascii=False, indent=2) + "\n"
