; What is inside braces is indented one step, the closing brace is not.
(block) @indent.begin
(block "}" @indent.branch @indent.end)
