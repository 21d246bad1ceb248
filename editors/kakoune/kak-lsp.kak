# Language server for .downlead files through kak-lsp. Needs `eval %sh{ kak-lsp }` before it in kakrc.

hook global WinSetOption filetype=downlead %{
    set-option buffer lsp_servers %{
        [downlead]
        command = "downlead"
        args = ["lsp"]
        root_globs = [".git"]
        settings_section = "_"
        [downlead.settings._.downlead]
        swatches = false
        [downlead.settings._.downlead.hints]
        loss = true
        power = true
        radiated = true
        limits = true
        readings = true
        cables = true
        bands = []
        aligned = false
    }
    set-option buffer lsp_language_id downlead
    lsp-enable-window
    lsp-inlay-hints-enable window
    lsp-inlay-diagnostics-enable window
    map window user l ':enter-user-mode lsp<ret>' -docstring 'language server'
}
