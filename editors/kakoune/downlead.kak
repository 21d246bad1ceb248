# Colours, indentation and language server for .downlead files.

hook global BufCreate .*[.]downlead %{
    set-option buffer filetype downlead
}

# the delimiters below are unusual because braces inside do not balance
hook global WinSetOption filetype=downlead %~
    require-module downlead

    set-option window static_words %opt{downlead_static_words}
    hook window InsertChar \n -group downlead-indent downlead-indent-on-new-line
    hook window InsertChar \} -group downlead-indent downlead-indent-on-closing-brace
    hook -once -always window WinSetOption filetype=.* %{
        remove-hooks window downlead-.+
    }
~

hook -group downlead-highlight global WinSetOption filetype=downlead %{
    add-highlighter window/downlead ref downlead
    hook -once -always window WinSetOption filetype=.* %{
        remove-highlighter window/downlead
    }
}

hook global BufSetOption filetype=downlead %{
    set-option buffer comment_line '//'
    set-option buffer indentwidth 4
    set-option buffer extra_word_chars '_' '-' '.'
}

provide-module downlead %§
    add-highlighter shared/downlead regions
    add-highlighter shared/downlead/code default-region group
    add-highlighter shared/downlead/comment region '//' '$' fill comment
    add-highlighter shared/downlead/text region '"' '"|$' fill string

    add-highlighter shared/downlead/code/operator regex '±|\+/-|[=+*]' 0:operator
    # a name at the start of a statement is a tag
    add-highlighter shared/downlead/code/tag regex '(?:^|[{};])\h*([\w.-]+)' 1:variable
    add-highlighter shared/downlead/code/number regex '(?<![\w.])(?<!\w-)[0-9]+(?:\.[0-9]+)?(?::[0-9]+(?:\.[0-9]+)?|[eE][+-]?[0-9]+)?(?![\w.-])' 0:value
    add-highlighter shared/downlead/code/date regex '(?<![\w.-])[0-9]{4}-[0-9]{2}(?:-[0-9]{2})?(?![\w.-])' 0:value
    add-highlighter shared/downlead/code/angle regex '[0-9]+°[ ]?[0-9]+(?:\.[0-9]+)?′(?:[ ]?[0-9]+(?:\.[0-9]+)?″)?' 0:value
    # BEGIN generated: lists
    add-highlighter shared/downlead/code/word regex '(?<![\w.-])(transmit-frequency|inner-resistivity|outer-resistivity|receive-frequency|strand-diameter|hata-suburban|repeatability|ssb-processed|construction|jurisdiction|loss-tangent|occupational|permittivity|preamplifier|receive-loss|certificate|directivity|height-amsl|quiet-rural|residential|resistivity|return-loss|sensitivity|temperature|transceiver|transmitter|bullington|calibrated|circulator|confidence|efficiency|free-space|hata-urban|horizontal|instrument|reflection|resolution|site-noise|allocated|amplifier|authority|averaging|bandwidth|condition|conductor|connector|corrected|delivered|displayed|elevation|frequency|generator|hata-open|impedance|isolation|linearity|longitude|protector|reactance|reference|reflected|resonance|threshold|accuracy|baseline|blocking|branches|combiner|coverage|dc-input|diameter|diplexer|distance|duplexer|equalise|foldback|isolator|k-factor|latitude|one-edge|position|quieting|readings|realized|recalled|receiver|reversed|transmit|velocity|vertical|adapter|against|ambient|antenna|carrier|cascade|coupled|coupler|degrees|desense|divider|edition|forward|instead|licence|maximum|nominal|pattern|profile|reading|receive|rejects|service|session|spacing|station|through|two-ray|typical|variant|voltage|accept|beside|beyond|branch|device|etrs89|excess|expect|family|figure|filter|ground|height|holder|jumper|medium|offset|output|passes|places|public|radius|rating|series|shared|source|spread|strand|switch|within|above|added|after|alone|apart|balun|below|blank|braid|cable|chain|class|dated|datum|delay|drift|fails|field|fixed|guess|inner|input|joins|keyed|limit|meter|model|nad27|nad83|noise|outer|phase|piece|place|power|rated|ratio|rules|rural|scale|sheet|short|shunt|sinad|since|split|title|total|tuner|under|until|valid|wgs84|wires|amsl|band|bump|city|clad|data|date|down|duty|eirp|ends|from|full|gain|haat|high|kind|link|load|loss|mean|mode|need|open|over|port|read|size|spot|tail|take|then|ways|with|GHz|MHz|agl|ask|bow|dBW|dBd|dBi|dBm|dms|due|erp|for|hop|kHz|let|low|net|out|pad|pep|per|put|run|snr|ssb|swr|tee|use|way|wet|yes|Hz|am|at|by|cw|dB|fm|ft|if|in|kW|km|mW|no|of|on|to|up|k|m)(?![\w.-])' 1:operator
    add-highlighter shared/downlead/code/definition regex '(?:^|[{};])\h*(instrument|connector|licence|session|station|variant|accept|device|cable|chain|rules|band|link|let|use)(?![\w.-])' 1:keyword
    add-highlighter shared/downlead/code/part regex '(?:^|[{};])\h*(preamplifier|transceiver|transmitter|circulator|amplifier|protector|combiner|diplexer|duplexer|isolator|receiver|adapter|antenna|coupler|divider|filter|jumper|switch|balun|meter|tuner|load|tail|pad|run)(?![\w.-])' 1:type
    add-highlighter shared/downlead/code/chain regex '(?:^|[{};])\h*(branches|readings|branch|expect|limit|read)(?![\w.-])' 1:keyword
    add-highlighter shared/downlead/code/property regex '(?:^|[{};])\h*(inner-resistivity|outer-resistivity|strand-diameter|repeatability|construction|jurisdiction|loss-tangent|permittivity|certificate|directivity|resistivity|return-loss|sensitivity|temperature|calibrated|efficiency|reflection|resolution|site-noise|authority|bandwidth|condition|conductor|generator|impedance|isolation|linearity|resonance|threshold|accuracy|baseline|blocking|coverage|diameter|distance|equalise|foldback|k-factor|position|recalled|reversed|transmit|velocity|coupled|edition|pattern|profile|receive|service|spacing|through|voltage|beside|excess|family|ground|height|holder|passes|radius|rating|source|strand|alone|braid|class|dated|delay|drift|fails|field|fixed|inner|joins|keyed|model|noise|outer|phase|piece|place|power|ratio|scale|short|split|under|until|valid|wires|bump|duty|from|gain|haat|high|kind|loss|mode|need|open|port|size|spot|take|ways|ask|due|hop|low|put|swr|tee)(?![\w.-])' 1:attribute
    add-highlighter shared/downlead/code/quantity regex '(?<![\w.])(?<!\w-)([0-9]+(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?)\h*((?:dB\h*/\h*100\h*ft\h*/\h*sqrt\(MHz\)|dB\h*/\h*100\h*m\h*/\h*sqrt\(MHz\)|dB\h*/\h*100\h*ft\h*/\h*√MHz|dB\h*/\h*100\h*ft\h*/\h*MHz|dB\h*/\h*100\h*m\h*/\h*√MHz|dB\h*/\h*100\h*m\h*/\h*MHz|wavelengths|wavelength|dB\h*/\h*100\h*ft|dB\h*/\h*100\h*m|dBc\h*/\h*Hz|mW\h*/\h*cm2|dB\h*/\h*ft|dB\h*/\h*km|ohm-m|pF\h*/\h*ft|W\h*/\h*m2|dB\h*/\h*m|degC|degF|ohms|pF\h*/\h*m|A\h*/\h*m|GHz|MHz|V\h*/\h*m|dBW|dBd|dBi|dBm|deg|kHz|min|ohm|Hz|cm|dB|ft|in|kV|kW|km|mW|mi|mm|ms|ns|uV|uW|us|yd|°C|°F|µV|µW|µs|Ωm|μV|μW|μs|Ωm|A|V|W|h|m|s|°|Ω|λ|Ω)(?![\w.°µ])(?!-\w)|%)' 1:value 2:meta
    declare-option -hidden str-list downlead_static_words GHz Hz MHz above accept accuracy adapter added after against agl allocated alone am ambient amplifier amsl antenna apart ask at authority averaging balun band bandwidth baseline below beside beyond blank blocking bow braid branch branches bullington bump by cable calibrated carrier cascade certificate chain circulator city clad class combiner condition conductor confidence connector construction corrected coupled coupler coverage cw dB dBW dBd dBi dBm data date dated datum dc-input degrees delay delivered desense device diameter diplexer directivity displayed distance divider dms down drift due duplexer duty edition efficiency eirp elevation ends equalise erp etrs89 excess expect fails family field figure filter fixed fm foldback for forward free-space frequency from ft full gain generator ground guess haat hata-open hata-suburban hata-urban height height-amsl high holder hop horizontal if impedance in inner inner-resistivity input instead instrument isolation isolator joins jumper jurisdiction k k-factor kHz kW keyed kind km latitude let licence limit linearity link load longitude loss loss-tangent low m mW maximum mean medium meter mode model nad27 nad83 need net no noise nominal occupational of offset on one-edge open out outer outer-resistivity output over pad passes pattern pep per permittivity phase piece place places port position power preamplifier profile protector public put quiet-rural quieting radius rated rating ratio reactance read reading readings realized recalled receive receive-frequency receive-loss receiver reference reflected reflection rejects repeatability residential resistivity resolution resonance return-loss reversed rules run rural scale sensitivity series service session shared sheet short shunt sinad since site-noise size snr source spacing split spot spread ssb ssb-processed station strand strand-diameter switch swr tail take tee temperature then threshold through title to total transceiver transmit transmit-frequency transmitter tuner two-ray typical under until up use valid variant velocity vertical voltage way ways wet wgs84 wires with within yes
    # END generated: lists

    define-command -hidden downlead-indent-on-new-line %~
        evaluate-commands -draft -itersel %|
            # as the line before
            try %{ execute-keys -draft <semicolon>K<a-&> }
            # one step more after an open brace
            try %! execute-keys -draft kx<a-k>\{\h*$<ret>j<a-gt> !
        |
    ~

    define-command -hidden downlead-indent-on-closing-brace %~
        # under the line that opened it
        try %! execute-keys -itersel -draft <a-h><a-k>^\h+\}$<ret>hms\A|.\z<ret>1<a-&> !
    ~
§
