(block) @indent

(block "}" @outdent)
