if vim.b.did_ftplugin then
  return
end
vim.b.did_ftplugin = true

vim.bo.commentstring = "// %s"
vim.bo.comments = "://"
vim.bo.expandtab = true
vim.bo.shiftwidth = 4
vim.bo.softtabstop = 4
-- `DU1.high`, `7-16-pair` are one word
vim.opt_local.iskeyword:append({ "-", "." })
vim.b.undo_ftplugin = "setlocal commentstring< comments< expandtab< shiftwidth< softtabstop< iskeyword<"

-- colours from the tree-sitter parser where it is installed, else from syntax/downlead.vim
local function parser_is_there()
  -- 0.10 raises an error where 0.11 answers nothing
  local ok, added = pcall(vim.treesitter.language.add, "downlead")
  return ok and (added or vim.fn.has("nvim-0.11") == 0)
end
if parser_is_there() and pcall(vim.treesitter.start, 0, "downlead") then
  vim.b.undo_ftplugin = vim.b.undo_ftplugin .. " | lua vim.treesitter.stop()"
end
