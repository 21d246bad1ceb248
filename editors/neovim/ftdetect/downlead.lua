vim.filetype.add({ extension = { downlead = "downlead" } })
