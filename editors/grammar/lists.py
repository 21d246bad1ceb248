"""The lists of the highlighters that keep them in their own language: Vim, Emacs, Kakoune, Kate."""

import re
from xml.sax.saxutils import escape as xml

from sections import quoted, wrap
from tables import longest_first, unit_regex

# (group of keywords, its name in Vim, face in Emacs, face in Kakoune, list in Kate)
STATEMENTS = [
    ("definition", "downleadDefinition", "font-lock-keyword-face", "keyword", "definitions"),
    ("part", "downleadPart", "font-lock-type-face", "type", "parts"),
    ("chain", "downleadStatement", "font-lock-keyword-face", "keyword", "statements"),
    ("property", "downleadProperty", "font-lock-variable-name-face", "attribute", "properties"),
]


def units(t, escape):
    """All spellings, longest first, as patterns."""
    return [unit_regex(s, escape) for s in longest_first(t["unit_symbols"])]


def vim(t):
    """Syntax items; Vim's default kind of pattern, where + | ( ) { are plain unless escaped."""
    def group(words):
        return r"\%(" + r"\|".join(longest_first(words)) + r"\)"

    spelt = [u.replace("[ \\t]*", r"\s*") for u in units(t, lambda s: re.sub(r"([.*~\[\]/])", r"\\\1", s))]
    # the slash of a compound unit is no keyword character, so the end is looked at by hand
    unit = r"\%(" + r"\|".join(u for u in spelt if u != "%") + r"\)\k\@!\|%"
    number = r"\<-\=\d\+\%(\.\d\+\)\=\%([eE][-+]\=\d\+\)\="
    lines = [f'syntax match downleadWord "\\<{group(t["inner_words"])}\\>"']
    for name, vim_name, *_ in STATEMENTS:
        lines.append(f'syntax match {vim_name} "\\%(\\%(^\\|[{{}};]\\)\\s*\\)\\@<={group(t["groups"][name])}\\>"')
    lines.append(f'syntax match downleadNumber "{number}\\ze\\s*\\%({unit}\\)" nextgroup=downleadUnit skipwhite')
    lines.append(f'syntax match downleadUnit "{unit}" contained')
    return "\n".join(lines)


def emacs(t):
    """Constants of downlead-mode.el."""
    def constant(name, words, doc):
        return f"(defconst {name}\n  '(\n" + wrap(quoted(words), "    ", 90) + f')\n  "{doc}")'

    out = [constant(f"downlead--{name}-keywords", t["groups"][name], f"Statement keywords: {name}.") for name, *_ in STATEMENTS]
    out.append(constant("downlead--words", t["inner_words"], "Words with a meaning inside a statement."))
    out.append(constant("downlead--units", longest_first(t["unit_symbols"]), "Spellings of units."))
    return "\n\n".join(out)


def kakoune(t):
    """Regular expressions of downlead.kak, as shell-less string options."""
    def alternatives(words):
        return "|".join(longest_first(words))

    spelt = units(t, lambda s: re.sub(r"([.*+?()\[\]{}|^$/])", r"\\\1", s))
    lines = []
    for name, _, _, face, _ in STATEMENTS:
        lines.append(f"    add-highlighter shared/downlead/code/{name} regex "
                     f"'(?:^|[{{}};])\\h*({alternatives(t['groups'][name])})(?![\\w.-])' 1:{face}")
    lines.insert(0, f"    add-highlighter shared/downlead/code/word regex '(?<![\\w.-])({alternatives(t['inner_words'])})(?![\\w.-])' 1:operator")
    lines.append(f"    add-highlighter shared/downlead/code/quantity regex "
                 f"'(?<![\\w.])(?<!\\w-)([0-9]+(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]+)?)\\h*((?:{'|'.join(u.replace('[ ' + chr(92) + 't]', chr(92) + 'h') for u in spelt if u != '%')})(?![\\w.°µ])(?!-\\w)|%)' 1:value 2:meta")
    lines.append(f"    declare-option -hidden str-list downlead_static_words {' '.join(t['inner_words'])}")
    return "\n".join(lines)


def kate_lists(t):
    """Lists of the syntax XML. Compound units are rules, since a blank ends a word."""
    out = []
    for name, *_, kate in STATEMENTS:
        out.append(f'    <list name="{kate}">')
        out += [f"      <item>{xml(w)}</item>" for w in t["groups"][name]]
        out.append("    </list>")
    out.append('    <list name="words">')
    out += [f"      <item>{xml(w)}</item>" for w in t["inner_words"]]
    out.append("    </list>")
    return "\n".join(out)


def kate_unit_pattern(t):
    spelt = units(t, lambda s: re.sub(r"([.*+?()\[\]{}|^$])", r"\\\1", s))
    words = "|".join(u.replace("[ \\t]*", "\\s*") for u in spelt if u != "%")
    return f"(?:(?:{words})(?![\\w.°µ]|-\\w)|%)"


def kate_quantity(t):
    """A number that a unit follows."""
    return f'        <RegExpr attribute="Number" context="Unit" String="&number;(?=\\s*{xml(kate_unit_pattern(t))})"/>'


def kate_units(t):
    """The unit after it."""
    return f'        <RegExpr attribute="Unit" context="#pop" String="\\s*{xml(kate_unit_pattern(t))}"/>'
