/**
 * Tree-sitter grammar of .downlead files.
 *
 * The language is uniform: a statement is one line, `KEYWORD element element, element …`, with a block
 * in braces if it has one. So the grammar knows no statement by itself; which words are keywords and
 * which spellings are units comes from the program's own tables (see editors/grammar).
 *
 * Differences from the program's own parser, none of which shows in colours, folds or indentation:
 * `{` must stand on the line of its head, and a word glued to a value is not looked into.
 */

// BEGIN generated: tables
const KEYWORDS = [
  "use", "band", "let", "cable", "connector", "device", "instrument", "session", "station", "chain",
  "licence", "rules", "link", "variant", "accept", "transmit", "receive", "impedance", "velocity", "loss",
  "construction", "wires", "valid", "accuracy", "rating", "voltage", "size", "conductor", "source",
  "recalled", "joins", "limit", "family", "bump", "return-loss", "swr", "kind", "high", "low", "port", "from",
  "isolation", "ratio", "split", "tee", "reversed", "passes", "gain", "noise", "excess", "ways", "coupled",
  "calibrated", "scale", "resolution", "due", "linearity", "repeatability", "directivity", "certificate",
  "load", "read", "temperature", "generator", "drift", "piece", "readings", "resonance", "delay", "phase",
  "adapter", "position", "ground", "place", "under", "beside", "spot", "alone", "site-noise", "transmitter",
  "receiver", "transceiver", "run", "jumper", "tail", "pad", "filter", "isolator", "circulator", "protector",
  "switch", "coupler", "meter", "balun", "tuner", "duplexer", "diplexer", "combiner", "divider", "amplifier",
  "preamplifier", "antenna", "branches", "expect", "authority", "jurisdiction", "service", "edition", "dated",
  "until", "holder", "class", "ask", "threshold", "fixed", "condition", "reflection", "field", "hop",
  "profile", "distance", "k-factor", "need", "model", "coverage", "take", "put", "branch", "inner", "outer",
  "permittivity", "loss-tangent", "strand", "strand-diameter", "braid", "resistivity", "inner-resistivity",
  "outer-resistivity", "diameter", "spacing", "baseline", "through", "open", "short", "equalise", "power",
  "mode", "duty", "keyed", "foldback", "bandwidth", "sensitivity", "blocking", "efficiency", "height",
  "pattern", "haat", "radius", "fails",
];

const WORDS = [
  "GHz", "Hz", "MHz", "above", "added", "after", "against", "agl", "allocated", "am", "ambient", "amsl",
  "apart", "at", "averaging", "below", "beyond", "blank", "bow", "bullington", "by", "carrier", "cascade",
  "city", "clad", "confidence", "corrected", "cw", "dB", "dBW", "dBd", "dBi", "dBm", "data", "date", "datum",
  "dc-input", "degrees", "delivered", "desense", "displayed", "dms", "down", "eirp", "elevation", "ends",
  "erp", "etrs89", "figure", "fm", "for", "forward", "free-space", "frequency", "ft", "full", "guess",
  "hata-open", "hata-suburban", "hata-urban", "height-amsl", "horizontal", "if", "in", "input", "instead",
  "k", "kHz", "kW", "km", "latitude", "longitude", "m", "mW", "maximum", "mean", "medium", "nad27", "nad83",
  "net", "no", "nominal", "occupational", "of", "offset", "on", "one-edge", "out", "output", "over", "pep",
  "per", "places", "public", "quiet-rural", "quieting", "rated", "reactance", "reading", "realized",
  "receive-frequency", "receive-loss", "reference", "reflected", "rejects", "residential", "rural", "series",
  "shared", "sheet", "shunt", "sinad", "since", "snr", "spread", "ssb", "ssb-processed", "then", "title",
  "to", "total", "transmit-frequency", "two-ray", "typical", "up", "vertical", "way", "wet", "wgs84", "with",
  "within", "yes",
];

const INNER_WORDS = [
  "GHz", "Hz", "MHz", "above", "accept", "accuracy", "adapter", "added", "after", "against", "agl",
  "allocated", "alone", "am", "ambient", "amplifier", "amsl", "antenna", "apart", "ask", "at", "authority",
  "averaging", "balun", "band", "bandwidth", "baseline", "below", "beside", "beyond", "blank", "blocking",
  "bow", "braid", "branch", "branches", "bullington", "bump", "by", "cable", "calibrated", "carrier",
  "cascade", "certificate", "chain", "circulator", "city", "clad", "class", "combiner", "condition",
  "conductor", "confidence", "connector", "construction", "corrected", "coupled", "coupler", "coverage", "cw",
  "dB", "dBW", "dBd", "dBi", "dBm", "data", "date", "dated", "datum", "dc-input", "degrees", "delay",
  "delivered", "desense", "device", "diameter", "diplexer", "directivity", "displayed", "distance", "divider",
  "dms", "down", "drift", "due", "duplexer", "duty", "edition", "efficiency", "eirp", "elevation", "ends",
  "equalise", "erp", "etrs89", "excess", "expect", "fails", "family", "field", "figure", "filter", "fixed",
  "fm", "foldback", "for", "forward", "free-space", "frequency", "from", "ft", "full", "gain", "generator",
  "ground", "guess", "haat", "hata-open", "hata-suburban", "hata-urban", "height", "height-amsl", "high",
  "holder", "hop", "horizontal", "if", "impedance", "in", "inner", "inner-resistivity", "input", "instead",
  "instrument", "isolation", "isolator", "joins", "jumper", "jurisdiction", "k", "k-factor", "kHz", "kW",
  "keyed", "kind", "km", "latitude", "let", "licence", "limit", "linearity", "link", "load", "longitude",
  "loss", "loss-tangent", "low", "m", "mW", "maximum", "mean", "medium", "meter", "mode", "model", "nad27",
  "nad83", "need", "net", "no", "noise", "nominal", "occupational", "of", "offset", "on", "one-edge", "open",
  "out", "outer", "outer-resistivity", "output", "over", "pad", "passes", "pattern", "pep", "per",
  "permittivity", "phase", "piece", "place", "places", "port", "position", "power", "preamplifier", "profile",
  "protector", "public", "put", "quiet-rural", "quieting", "radius", "rated", "rating", "ratio", "reactance",
  "read", "reading", "readings", "realized", "recalled", "receive", "receive-frequency", "receive-loss",
  "receiver", "reference", "reflected", "reflection", "rejects", "repeatability", "residential",
  "resistivity", "resolution", "resonance", "return-loss", "reversed", "rules", "run", "rural", "scale",
  "sensitivity", "series", "service", "session", "shared", "sheet", "short", "shunt", "sinad", "since",
  "site-noise", "size", "snr", "source", "spacing", "split", "spot", "spread", "ssb", "ssb-processed",
  "station", "strand", "strand-diameter", "switch", "swr", "tail", "take", "tee", "temperature", "then",
  "threshold", "through", "title", "to", "total", "transceiver", "transmit", "transmit-frequency",
  "transmitter", "tuner", "two-ray", "typical", "under", "until", "up", "use", "valid", "variant", "velocity",
  "vertical", "voltage", "way", "ways", "wet", "wgs84", "wires", "with", "within", "yes",
];

const UNITS = [
  "dB/100 ft/sqrt(MHz)", "dB/100 m/sqrt(MHz)", "dB/100 ft/√MHz", "dB/100 ft/MHz", "dB/100 m/√MHz",
  "dB/100 m/MHz", "wavelengths", "wavelength", "dB/100 ft", "dB/100 m", "dBc/Hz", "mW/cm2", "dB/ft", "dB/km",
  "ohm-m", "pF/ft", "W/m2", "dB/m", "degC", "degF", "ohms", "pF/m", "A/m", "GHz", "MHz", "V/m", "dBW", "dBd",
  "dBi", "dBm", "deg", "kHz", "min", "ohm", "Hz", "cm", "dB", "ft", "in", "kV", "kW", "km", "mW", "mi", "mm",
  "ms", "ns", "uV", "uW", "us", "yd", "°C", "°F", "µV", "µW", "µs", "Ωm", "μV", "μW", "μs", "Ωm", "%", "A",
  "V", "W", "h", "m", "s", "°", "Ω", "λ", "Ω",
];

const GLUED_UNITS = [
  "dB/100 ft/sqrt(MHz)", "dB/100 m/sqrt(MHz)", "dB/100 ft/√MHz", "dB/100 ft/MHz", "dB/100 m/√MHz",
  "dB/100 m/MHz", "wavelengths", "wavelength", "dB/100 ft", "dB/100 m", "dBc/Hz", "mW/cm2", "dB/ft", "dB/km",
  "ohm-m", "pF/ft", "W/m2", "dB/m", "degC", "degF", "ohms", "pF/m", "A/m", "GHz", "MHz", "V/m", "dBW", "dBd",
  "dBi", "dBm", "deg", "kHz", "min", "ohm", "Hz", "cm", "dB", "ft", "in", "kV", "kW", "km", "mW", "mi", "mm",
  "ms", "ns", "uV", "uW", "us", "yd", "A", "V", "W", "h", "m", "s",
];
// END generated: tables

const LETTERS = /[A-Za-z_][A-Za-z0-9_]*(-[A-Za-z0-9_]+)*(\.[A-Za-z0-9_]+(-[A-Za-z0-9_]+)*)*/;
// `7-16-pair`, `4.3-10-pair`, `2m-fm`: digits that go on with a letter or a dash
const DIGIT_NAME = /[0-9]+(\.[0-9]+)*([A-Za-z_]|-[A-Za-z0-9_])[A-Za-z0-9_]*([.-][A-Za-z0-9_]+)*/;
// a ratio is one number: `4:1`
const NUMBER = /[+−–-]?[0-9]+(\.[0-9]+)?(:[0-9]+(\.[0-9]+)?|[eE][+-]?[0-9]+)?/;

/** @param {string[]} words */
const any = (words) => choice(...words);

/**
 * Spellings of units. In `dB/100 m` blanks around the slash and after 100 are free.
 * @param {string[]} symbols
 */
const spellings = (symbols) =>
  choice(
    ...symbols.map((symbol) => {
      if (!symbol.includes("/")) return symbol;
      const pattern = symbol
        .replace(/[()]/g, "\\$&")
        .replaceAll("/100 ", "/100[ \\t]*")
        .replaceAll("/", "[ \\t]*\\/[ \\t]*");
      return new RegExp(pattern);
    }),
  );

module.exports = grammar({
  name: "downlead",

  // comments run to the line end and never hold it, so they may stand between any two tokens
  extras: ($) => [/[ \t]/, $.comment],

  word: ($) => $.name,

  supertypes: ($) => [$._expression],

  inline: ($) => [$._element, $._atom],

  rules: {
    source_file: ($) => seq(repeat($._line), optional($.statement)),

    _line: ($) =>
      choice(
        seq($.statement, $._end),
        alias($.block_statement, $.statement),
        $._end,
      ),

    _end: ($) => choice(/\r?\n/, ";"),

    statement: ($) => $._head,

    block_statement: ($) => seq($._head, $.block),

    block: ($) => seq("{", repeat($._line), optional($.statement), "}"),

    // KEYWORD …, a tag, or a row of a table that begins with a value
    _head: ($) =>
      prec.right(
        seq(
          choice(
            $.keyword,
            alias($.only_word, $.name),
            $._value,
          ),
          repeat($._element),
        ),
      ),

    keyword: (_) => any(KEYWORDS),

    // `of`, `on`, `carrier`: no keywords, but words with a meaning inside a statement
    only_word: (_) => any(WORDS),

    _element: ($) => choice(",", "=", $._atom),

    _atom: ($) =>
      choice(
        $._value,
        $.word,
        $.string,
        $.date,
        $.dms,
      ),

    word: (_) => any(INNER_WORDS),

    _value: ($) =>
      choice(
        $._expression,
        $.range,
        $.tolerance,
      ),

    // `0.10 dB to 0.20 dB`
    range: ($) => prec.right(2, seq($._expression, "to", $._expression)),

    // `46 m ± 0.5 m`, `5 % k 2`, `32 W ± 5 % k 1`
    tolerance: ($) =>
      prec.right(
        2,
        seq(
          $._expression,
          choice(
            seq(
              choice("±", "+/-"),
              field("half_width", $._expression),
              optional($.coverage),
            ),
            $.coverage,
          ),
        ),
      ),

    coverage: ($) => prec.right(2, seq("k", $.number)),

    _expression: ($) =>
      choice(
        $.quantity,
        $.number,
        $.name,
        alias($.digit_name, $.name),
        $.parenthesized_expression,
        $.negation,
        $.binary_expression,
      ),

    parenthesized_expression: ($) => seq("(", $._expression, ")"),

    negation: ($) => prec(5, seq(choice("-", "−", "–"), choice($.name, $.parenthesized_expression))),

    binary_expression: ($) =>
      prec.left(
        4,
        seq(
          field("left", $._expression),
          field("operator", choice("+", "-", "−", "–", "*", "/", "^")),
          field("right", $._expression),
        ),
      ),

    // a number and its unit; glued together (`46m`) they are one token, since a band may be called so
    quantity: ($) =>
      prec.right(
        3,
        choice(
          $._glued,
          seq($.number, $.unit),
          // `0.05 dB per sqrt(GHz)`
          seq($.number, optional($.unit), "per", alias($.root, $.unit)),
        ),
      ),

    // order matters from here on: of two tokens of equal length the first wins
    _glued: (_) => token(seq(NUMBER, spellings(GLUED_UNITS))),

    date: (_) => token(/[0-9]{4}-(0[1-9]|1[0-2])(-[0-9]{2})?/),

    dms: (_) => token(/[0-9]+°[ ]?[0-9]+(\.[0-9]+)?′([ ]?[0-9]+(\.[0-9]+)?″)?/),

    number: (_) => token(NUMBER),

    unit: (_) => spellings(UNITS),

    root: (_) => token(/sqrt\([A-Za-z]+\)|√[A-Za-z]+/),

    digit_name: (_) => token(DIGIT_NAME),

    name: (_) => token(LETTERS),

    string: (_) => token(/"[^"\r\n]*"/),

    comment: (_) => token(/\/\/[^\r\n]*/),
  },
});
