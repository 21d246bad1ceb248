; Written by editors/grammar/generate.py. Change queries.py there, not this file.

; what a part is an example of
((word) @keyword.operator . (name) @type (#eq? @keyword.operator "of"))

; bands; their names may look like lengths
(statement . (keyword "band") . (quantity) @type)
((word) @keyword.operator . (quantity) @label (#eq? @keyword.operator "on") (#match? @label "^[0-9.]+[a-z]+$"))
((word) @keyword.operator . (name) @label (#eq? @keyword.operator "on"))
(statement . (keyword "chain") "," . (quantity) @label (#match? @label "^[0-9.]+[a-z]+$"))

; what is defined
(statement
  . (keyword [
    "accept" "band" "cable" "chain" "connector" "device" "instrument" "let" "licence" "link" "place"
    "rules" "session" "station" "use" "variant"
  ])
  . [(name) (word)] @type)

; the tag of a part
(statement
  . (keyword [
    "adapter" "amplifier" "antenna" "balun" "circulator" "combiner" "coupler" "diplexer" "divider"
    "duplexer" "filter" "isolator" "jumper" "load" "meter" "pad" "preamplifier" "protector"
    "receiver" "run" "switch" "tail" "transceiver" "transmitter" "tuner"
  ])
  . (name) @constant)

; a tag in a chain
(statement . (name) @constant)

; definitions
(keyword [
    "accept" "band" "cable" "chain" "connector" "device" "instrument" "let" "licence" "link" "rules"
    "session" "station" "use" "variant"
  ] @keyword.storage.type)

; statements of a chain
(keyword [
    "branch" "branches" "expect" "limit" "read" "readings"
  ] @keyword)

; parts of a station
(keyword [
    "adapter" "amplifier" "antenna" "balun" "circulator" "combiner" "coupler" "diplexer" "divider"
    "duplexer" "filter" "isolator" "jumper" "load" "meter" "pad" "preamplifier" "protector"
    "receiver" "run" "switch" "tail" "transceiver" "transmitter" "tuner"
  ] @type.builtin)

; lines inside a block
(keyword) @variable.other.member

["{" "}" "(" ")"] @punctuation.bracket
["," ";"] @punctuation.delimiter
["=" "+" "-" "−" "–" "*" "/" "^" "±" "+/-"] @operator
(range "to" @keyword.operator)
(coverage "k" @keyword.operator)
(quantity "per" @keyword.operator)

; a number glued to its unit
(quantity) @constant.numeric

(number) @constant.numeric
(date) @constant.numeric
(dms) @constant.numeric
(unit) @constant.builtin

; names, words, values
(name) @variable
(word) @keyword.operator
(string) @string
(comment) @comment.line
