-- Read by Neovim 0.11 and later when `vim.lsp.enable("downlead")` is called (plugin/downlead.lua does it).
return {
  cmd = { "downlead", "lsp" },
  filetypes = { "downlead" },
  root_markers = { ".git" },
  workspace_required = false,
  settings = {
    downlead = {
      hints = {
        loss = true,
        power = true,
        radiated = true,
        limits = true,
        readings = true,
        cables = true,
        bands = {},
      },
    },
  },
}
