-- `let g:downlead_no_server = 1` before this leaves only colours and indentation.
if vim.g.loaded_downlead then
  return
end
vim.g.loaded_downlead = true
if not vim.g.downlead_no_server then
  require("downlead").enable()
end
