-- nvim --clean --headless -l neovim_colours.lua TOKENS.json RUNTIME [PARSER.so] : what colour each token has.
-- TOKENS.json: [{text, tokens: [[line, byte column, class]…]}…]; prints [[group…]…] as JSON, by syntax/downlead.vim,
-- or, with a parser, by the tree-sitter query.
local input, runtime, parser = arg[1], arg[2], arg[3]
vim.opt.runtimepath:append(runtime)
vim.g.downlead_no_server = 1
vim.cmd("filetype plugin indent on | syntax on")
if parser then
  vim.treesitter.language.add("downlead", { path = parser })
end
local out = {}
for _, case in ipairs(vim.json.decode(table.concat(vim.fn.readfile(input), "\n"))) do
  vim.cmd("enew!")
  vim.api.nvim_buf_set_lines(0, 0, -1, false, vim.split(case.text, "\n"))
  vim.bo.filetype = "downlead"
  if parser then
    assert(vim.treesitter.highlighter.active[vim.api.nvim_get_current_buf()], "tree-sitter did not start")
    vim.treesitter.get_parser(0):parse(true)
  end
  local groups = {}
  for i, token in ipairs(case.tokens) do
    if parser then
      -- captures with an underscore are helpers of a pattern and have no colour
      local found = vim.tbl_filter(function(c)
        return c.capture:sub(1, 1) ~= "_"
      end, vim.treesitter.get_captures_at_pos(0, token[1], token[2]))
      groups[i] = #found > 0 and found[#found].capture or "none"
    else
      groups[i] = vim.fn.synIDattr(vim.fn.synID(token[1] + 1, token[2] + 1, true), "name")
    end
  end
  out[#out + 1] = groups
end
io.stdout:write(vim.json.encode(out), "\n")
