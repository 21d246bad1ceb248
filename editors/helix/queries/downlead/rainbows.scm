(block) @rainbow.scope

["{" "}" "(" ")"] @rainbow.bracket
