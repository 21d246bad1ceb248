" Colours without tree-sitter, for Neovim and for plain Vim.
if exists("b:current_syntax")
  finish
endif

syntax case match
syntax iskeyword @,48-57,_,-,.,181,956,937,8486,176,955

" Of two matches at one place the later one wins.
syntax match downleadOperator "±\|+/-\|[-=+*]"
" a name at the start of a statement is a tag
syntax match downleadTag "\%(\%(^\|[{};]\)\s*\)\@<=\k\+"
syntax match downleadNumber "\<-\=\d\+\%(\.\d\+\)\=\%(:\d\+\%(\.\d\+\)\=\|[eE][-+]\=\d\+\)\=\>"
" BEGIN generated: lists
syntax match downleadWord "\<\%(transmit-frequency\|inner-resistivity\|outer-resistivity\|receive-frequency\|strand-diameter\|hata-suburban\|repeatability\|ssb-processed\|construction\|jurisdiction\|loss-tangent\|occupational\|permittivity\|preamplifier\|receive-loss\|certificate\|directivity\|height-amsl\|quiet-rural\|residential\|resistivity\|return-loss\|sensitivity\|temperature\|transceiver\|transmitter\|bullington\|calibrated\|circulator\|confidence\|efficiency\|free-space\|hata-urban\|horizontal\|instrument\|reflection\|resolution\|site-noise\|allocated\|amplifier\|authority\|averaging\|bandwidth\|condition\|conductor\|connector\|corrected\|delivered\|displayed\|elevation\|frequency\|generator\|hata-open\|impedance\|isolation\|linearity\|longitude\|protector\|reactance\|reference\|reflected\|resonance\|threshold\|accuracy\|baseline\|blocking\|branches\|combiner\|coverage\|dc-input\|diameter\|diplexer\|distance\|duplexer\|equalise\|foldback\|isolator\|k-factor\|latitude\|one-edge\|position\|quieting\|readings\|realized\|recalled\|receiver\|reversed\|transmit\|velocity\|vertical\|adapter\|against\|ambient\|antenna\|carrier\|cascade\|coupled\|coupler\|degrees\|desense\|divider\|edition\|forward\|instead\|licence\|maximum\|nominal\|pattern\|profile\|reading\|receive\|rejects\|service\|session\|spacing\|station\|through\|two-ray\|typical\|variant\|voltage\|accept\|beside\|beyond\|branch\|device\|etrs89\|excess\|expect\|family\|figure\|filter\|ground\|height\|holder\|jumper\|medium\|offset\|output\|passes\|places\|public\|radius\|rating\|series\|shared\|source\|spread\|strand\|switch\|within\|above\|added\|after\|alone\|apart\|balun\|below\|blank\|braid\|cable\|chain\|class\|dated\|datum\|delay\|drift\|fails\|field\|fixed\|guess\|inner\|input\|joins\|keyed\|limit\|meter\|model\|nad27\|nad83\|noise\|outer\|phase\|piece\|place\|power\|rated\|ratio\|rules\|rural\|scale\|sheet\|short\|shunt\|sinad\|since\|split\|title\|total\|tuner\|under\|until\|valid\|wgs84\|wires\|amsl\|band\|bump\|city\|clad\|data\|date\|down\|duty\|eirp\|ends\|from\|full\|gain\|haat\|high\|kind\|link\|load\|loss\|mean\|mode\|need\|open\|over\|port\|read\|size\|spot\|tail\|take\|then\|ways\|with\|GHz\|MHz\|agl\|ask\|bow\|dBW\|dBd\|dBi\|dBm\|dms\|due\|erp\|for\|hop\|kHz\|let\|low\|net\|out\|pad\|pep\|per\|put\|run\|snr\|ssb\|swr\|tee\|use\|way\|wet\|yes\|Hz\|am\|at\|by\|cw\|dB\|fm\|ft\|if\|in\|kW\|km\|mW\|no\|of\|on\|to\|up\|k\|m\)\>"
syntax match downleadDefinition "\%(\%(^\|[{};]\)\s*\)\@<=\%(instrument\|connector\|licence\|session\|station\|variant\|accept\|device\|cable\|chain\|rules\|band\|link\|let\|use\)\>"
syntax match downleadPart "\%(\%(^\|[{};]\)\s*\)\@<=\%(preamplifier\|transceiver\|transmitter\|circulator\|amplifier\|protector\|combiner\|diplexer\|duplexer\|isolator\|receiver\|adapter\|antenna\|coupler\|divider\|filter\|jumper\|switch\|balun\|meter\|tuner\|load\|tail\|pad\|run\)\>"
syntax match downleadStatement "\%(\%(^\|[{};]\)\s*\)\@<=\%(branches\|readings\|branch\|expect\|limit\|read\)\>"
syntax match downleadProperty "\%(\%(^\|[{};]\)\s*\)\@<=\%(inner-resistivity\|outer-resistivity\|strand-diameter\|repeatability\|construction\|jurisdiction\|loss-tangent\|permittivity\|certificate\|directivity\|resistivity\|return-loss\|sensitivity\|temperature\|calibrated\|efficiency\|reflection\|resolution\|site-noise\|authority\|bandwidth\|condition\|conductor\|generator\|impedance\|isolation\|linearity\|resonance\|threshold\|accuracy\|baseline\|blocking\|coverage\|diameter\|distance\|equalise\|foldback\|k-factor\|position\|recalled\|reversed\|transmit\|velocity\|coupled\|edition\|pattern\|profile\|receive\|service\|spacing\|through\|voltage\|beside\|excess\|family\|ground\|height\|holder\|passes\|radius\|rating\|source\|strand\|alone\|braid\|class\|dated\|delay\|drift\|fails\|field\|fixed\|inner\|joins\|keyed\|model\|noise\|outer\|phase\|piece\|place\|power\|ratio\|scale\|short\|split\|under\|until\|valid\|wires\|bump\|duty\|from\|gain\|haat\|high\|kind\|loss\|mode\|need\|open\|port\|size\|spot\|take\|ways\|ask\|due\|hop\|low\|put\|swr\|tee\)\>"
syntax match downleadNumber "\<-\=\d\+\%(\.\d\+\)\=\%([eE][-+]\=\d\+\)\=\ze\s*\%(\%(dB\s*/\s*100\s*ft\s*/\s*sqrt(MHz)\|dB\s*/\s*100\s*m\s*/\s*sqrt(MHz)\|dB\s*/\s*100\s*ft\s*/\s*√MHz\|dB\s*/\s*100\s*ft\s*/\s*MHz\|dB\s*/\s*100\s*m\s*/\s*√MHz\|dB\s*/\s*100\s*m\s*/\s*MHz\|wavelengths\|wavelength\|dB\s*/\s*100\s*ft\|dB\s*/\s*100\s*m\|dBc\s*/\s*Hz\|mW\s*/\s*cm2\|dB\s*/\s*ft\|dB\s*/\s*km\|ohm-m\|pF\s*/\s*ft\|W\s*/\s*m2\|dB\s*/\s*m\|degC\|degF\|ohms\|pF\s*/\s*m\|A\s*/\s*m\|GHz\|MHz\|V\s*/\s*m\|dBW\|dBd\|dBi\|dBm\|deg\|kHz\|min\|ohm\|Hz\|cm\|dB\|ft\|in\|kV\|kW\|km\|mW\|mi\|mm\|ms\|ns\|uV\|uW\|us\|yd\|°C\|°F\|µV\|µW\|µs\|Ωm\|μV\|μW\|μs\|Ωm\|A\|V\|W\|h\|m\|s\|°\|Ω\|λ\|Ω\)\k\@!\|%\)" nextgroup=downleadUnit skipwhite
syntax match downleadUnit "\%(dB\s*/\s*100\s*ft\s*/\s*sqrt(MHz)\|dB\s*/\s*100\s*m\s*/\s*sqrt(MHz)\|dB\s*/\s*100\s*ft\s*/\s*√MHz\|dB\s*/\s*100\s*ft\s*/\s*MHz\|dB\s*/\s*100\s*m\s*/\s*√MHz\|dB\s*/\s*100\s*m\s*/\s*MHz\|wavelengths\|wavelength\|dB\s*/\s*100\s*ft\|dB\s*/\s*100\s*m\|dBc\s*/\s*Hz\|mW\s*/\s*cm2\|dB\s*/\s*ft\|dB\s*/\s*km\|ohm-m\|pF\s*/\s*ft\|W\s*/\s*m2\|dB\s*/\s*m\|degC\|degF\|ohms\|pF\s*/\s*m\|A\s*/\s*m\|GHz\|MHz\|V\s*/\s*m\|dBW\|dBd\|dBi\|dBm\|deg\|kHz\|min\|ohm\|Hz\|cm\|dB\|ft\|in\|kV\|kW\|km\|mW\|mi\|mm\|ms\|ns\|uV\|uW\|us\|yd\|°C\|°F\|µV\|µW\|µs\|Ωm\|μV\|μW\|μs\|Ωm\|A\|V\|W\|h\|m\|s\|°\|Ω\|λ\|Ω\)\k\@!\|%" contained
" END generated: lists
syntax match downleadDate "\<\d\{4}-\d\d\%(-\d\d\)\=\>"
syntax match downleadAngle "\<\d\+°[ ]\=\d\+\%(\.\d\+\)\=′\%([ ]\=\d\+\%(\.\d\+\)\=″\)\="
syntax match downleadRoot "\<sqrt([A-Za-z]\+)\|√[A-Za-z]\+"
syntax region downleadText start=+"+ end=+"+ oneline
syntax match downleadComment "//.*" contains=@Spell

highlight default link downleadDefinition Keyword
highlight default link downleadPart Type
highlight default link downleadStatement Statement
highlight default link downleadProperty Identifier
highlight default link downleadWord Special
highlight default link downleadTag Constant
highlight default link downleadNumber Number
highlight default link downleadDate Number
highlight default link downleadAngle Number
highlight default link downleadUnit PreProc
highlight default link downleadRoot PreProc
highlight default link downleadOperator Operator
highlight default link downleadText String
highlight default link downleadComment Comment

let b:current_syntax = "downlead"
