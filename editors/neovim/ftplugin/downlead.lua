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
if pcall(vim.treesitter.language.add, "downlead") and vim.treesitter.query.get("downlead", "highlights") then
  if pcall(vim.treesitter.start, 0, "downlead") then
    vim.b.undo_ftplugin = vim.b.undo_ftplugin .. " | lua vim.treesitter.stop()"
  end
end
