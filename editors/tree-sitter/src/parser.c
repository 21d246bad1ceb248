#include "tree_sitter/parser.h"

#if defined(__GNUC__) || defined(__clang__)
#pragma GCC diagnostic ignored "-Wmissing-field-initializers"
#endif

#ifdef _MSC_VER
#pragma optimize("", off)
#elif defined(__clang__)
#pragma clang optimize off
#elif defined(__GNUC__)
#pragma GCC optimize ("O0")
#endif

#define LANGUAGE_VERSION 14
#define STATE_COUNT 81
#define LARGE_STATE_COUNT 44
#define SYMBOL_COUNT 397
#define ALIAS_COUNT 0
#define TOKEN_COUNT 375
#define EXTERNAL_TOKEN_COUNT 0
#define FIELD_COUNT 4
#define MAX_ALIAS_SEQUENCE_LENGTH 4
#define PRODUCTION_ID_COUNT 3

enum ts_symbol_identifiers {
  sym_name = 1,
  aux_sym__end_token1 = 2,
  anon_sym_SEMI = 3,
  anon_sym_LBRACE = 4,
  anon_sym_RBRACE = 5,
  anon_sym_use = 6,
  anon_sym_band = 7,
  anon_sym_let = 8,
  anon_sym_cable = 9,
  anon_sym_connector = 10,
  anon_sym_device = 11,
  anon_sym_instrument = 12,
  anon_sym_session = 13,
  anon_sym_station = 14,
  anon_sym_chain = 15,
  anon_sym_licence = 16,
  anon_sym_rules = 17,
  anon_sym_link = 18,
  anon_sym_variant = 19,
  anon_sym_accept = 20,
  anon_sym_transmit = 21,
  anon_sym_receive = 22,
  anon_sym_impedance = 23,
  anon_sym_velocity = 24,
  anon_sym_loss = 25,
  anon_sym_construction = 26,
  anon_sym_wires = 27,
  anon_sym_valid = 28,
  anon_sym_accuracy = 29,
  anon_sym_rating = 30,
  anon_sym_voltage = 31,
  anon_sym_size = 32,
  anon_sym_conductor = 33,
  anon_sym_source = 34,
  anon_sym_recalled = 35,
  anon_sym_joins = 36,
  anon_sym_limit = 37,
  anon_sym_family = 38,
  anon_sym_bump = 39,
  anon_sym_return_DASHloss = 40,
  anon_sym_swr = 41,
  anon_sym_kind = 42,
  anon_sym_high = 43,
  anon_sym_low = 44,
  anon_sym_port = 45,
  anon_sym_from = 46,
  anon_sym_isolation = 47,
  anon_sym_ratio = 48,
  anon_sym_split = 49,
  anon_sym_tee = 50,
  anon_sym_reversed = 51,
  anon_sym_passes = 52,
  anon_sym_gain = 53,
  anon_sym_noise = 54,
  anon_sym_excess = 55,
  anon_sym_ways = 56,
  anon_sym_coupled = 57,
  anon_sym_calibrated = 58,
  anon_sym_scale = 59,
  anon_sym_resolution = 60,
  anon_sym_due = 61,
  anon_sym_linearity = 62,
  anon_sym_repeatability = 63,
  anon_sym_directivity = 64,
  anon_sym_certificate = 65,
  anon_sym_load = 66,
  anon_sym_read = 67,
  anon_sym_temperature = 68,
  anon_sym_generator = 69,
  anon_sym_drift = 70,
  anon_sym_piece = 71,
  anon_sym_readings = 72,
  anon_sym_resonance = 73,
  anon_sym_delay = 74,
  anon_sym_phase = 75,
  anon_sym_adapter = 76,
  anon_sym_position = 77,
  anon_sym_ground = 78,
  anon_sym_place = 79,
  anon_sym_under = 80,
  anon_sym_beside = 81,
  anon_sym_spot = 82,
  anon_sym_alone = 83,
  anon_sym_site_DASHnoise = 84,
  anon_sym_transmitter = 85,
  anon_sym_receiver = 86,
  anon_sym_transceiver = 87,
  anon_sym_run = 88,
  anon_sym_jumper = 89,
  anon_sym_tail = 90,
  anon_sym_pad = 91,
  anon_sym_filter = 92,
  anon_sym_isolator = 93,
  anon_sym_circulator = 94,
  anon_sym_protector = 95,
  anon_sym_switch = 96,
  anon_sym_coupler = 97,
  anon_sym_meter = 98,
  anon_sym_balun = 99,
  anon_sym_tuner = 100,
  anon_sym_duplexer = 101,
  anon_sym_diplexer = 102,
  anon_sym_combiner = 103,
  anon_sym_divider = 104,
  anon_sym_amplifier = 105,
  anon_sym_preamplifier = 106,
  anon_sym_antenna = 107,
  anon_sym_branches = 108,
  anon_sym_expect = 109,
  anon_sym_authority = 110,
  anon_sym_jurisdiction = 111,
  anon_sym_service = 112,
  anon_sym_edition = 113,
  anon_sym_dated = 114,
  anon_sym_until = 115,
  anon_sym_holder = 116,
  anon_sym_class = 117,
  anon_sym_ask = 118,
  anon_sym_threshold = 119,
  anon_sym_fixed = 120,
  anon_sym_condition = 121,
  anon_sym_reflection = 122,
  anon_sym_field = 123,
  anon_sym_hop = 124,
  anon_sym_profile = 125,
  anon_sym_distance = 126,
  anon_sym_k_DASHfactor = 127,
  anon_sym_need = 128,
  anon_sym_model = 129,
  anon_sym_coverage = 130,
  anon_sym_take = 131,
  anon_sym_put = 132,
  anon_sym_branch = 133,
  anon_sym_inner = 134,
  anon_sym_outer = 135,
  anon_sym_permittivity = 136,
  anon_sym_loss_DASHtangent = 137,
  anon_sym_strand = 138,
  anon_sym_strand_DASHdiameter = 139,
  anon_sym_braid = 140,
  anon_sym_resistivity = 141,
  anon_sym_inner_DASHresistivity = 142,
  anon_sym_outer_DASHresistivity = 143,
  anon_sym_diameter = 144,
  anon_sym_spacing = 145,
  anon_sym_baseline = 146,
  anon_sym_through = 147,
  anon_sym_open = 148,
  anon_sym_short = 149,
  anon_sym_equalise = 150,
  anon_sym_power = 151,
  anon_sym_mode = 152,
  anon_sym_duty = 153,
  anon_sym_keyed = 154,
  anon_sym_foldback = 155,
  anon_sym_bandwidth = 156,
  anon_sym_sensitivity = 157,
  anon_sym_blocking = 158,
  anon_sym_efficiency = 159,
  anon_sym_height = 160,
  anon_sym_pattern = 161,
  anon_sym_haat = 162,
  anon_sym_radius = 163,
  anon_sym_fails = 164,
  anon_sym_GHz = 165,
  anon_sym_Hz = 166,
  anon_sym_MHz = 167,
  anon_sym_above = 168,
  anon_sym_added = 169,
  anon_sym_after = 170,
  anon_sym_against = 171,
  anon_sym_agl = 172,
  anon_sym_allocated = 173,
  anon_sym_am = 174,
  anon_sym_ambient = 175,
  anon_sym_amsl = 176,
  anon_sym_apart = 177,
  anon_sym_at = 178,
  anon_sym_averaging = 179,
  anon_sym_below = 180,
  anon_sym_beyond = 181,
  anon_sym_blank = 182,
  anon_sym_bow = 183,
  anon_sym_bullington = 184,
  anon_sym_by = 185,
  anon_sym_carrier = 186,
  anon_sym_cascade = 187,
  anon_sym_city = 188,
  anon_sym_clad = 189,
  anon_sym_confidence = 190,
  anon_sym_corrected = 191,
  anon_sym_cw = 192,
  anon_sym_dB = 193,
  anon_sym_dBW = 194,
  anon_sym_dBd = 195,
  anon_sym_dBi = 196,
  anon_sym_dBm = 197,
  anon_sym_data = 198,
  anon_sym_date = 199,
  anon_sym_datum = 200,
  anon_sym_dc_DASHinput = 201,
  anon_sym_degrees = 202,
  anon_sym_delivered = 203,
  anon_sym_desense = 204,
  anon_sym_displayed = 205,
  anon_sym_dms = 206,
  anon_sym_down = 207,
  anon_sym_eirp = 208,
  anon_sym_elevation = 209,
  anon_sym_ends = 210,
  anon_sym_erp = 211,
  anon_sym_etrs89 = 212,
  anon_sym_figure = 213,
  anon_sym_fm = 214,
  anon_sym_for = 215,
  anon_sym_forward = 216,
  anon_sym_free_DASHspace = 217,
  anon_sym_frequency = 218,
  anon_sym_ft = 219,
  anon_sym_full = 220,
  anon_sym_guess = 221,
  anon_sym_hata_DASHopen = 222,
  anon_sym_hata_DASHsuburban = 223,
  anon_sym_hata_DASHurban = 224,
  anon_sym_height_DASHamsl = 225,
  anon_sym_horizontal = 226,
  anon_sym_if = 227,
  anon_sym_in = 228,
  anon_sym_input = 229,
  anon_sym_instead = 230,
  anon_sym_k = 231,
  anon_sym_kHz = 232,
  anon_sym_kW = 233,
  anon_sym_km = 234,
  anon_sym_latitude = 235,
  anon_sym_longitude = 236,
  anon_sym_m = 237,
  anon_sym_mW = 238,
  anon_sym_maximum = 239,
  anon_sym_mean = 240,
  anon_sym_medium = 241,
  anon_sym_nad27 = 242,
  anon_sym_nad83 = 243,
  anon_sym_net = 244,
  anon_sym_no = 245,
  anon_sym_nominal = 246,
  anon_sym_occupational = 247,
  anon_sym_of = 248,
  anon_sym_offset = 249,
  anon_sym_on = 250,
  anon_sym_one_DASHedge = 251,
  anon_sym_out = 252,
  anon_sym_output = 253,
  anon_sym_over = 254,
  anon_sym_pep = 255,
  anon_sym_per = 256,
  anon_sym_places = 257,
  anon_sym_public = 258,
  anon_sym_quiet_DASHrural = 259,
  anon_sym_quieting = 260,
  anon_sym_rated = 261,
  anon_sym_reactance = 262,
  anon_sym_reading = 263,
  anon_sym_realized = 264,
  anon_sym_receive_DASHfrequency = 265,
  anon_sym_receive_DASHloss = 266,
  anon_sym_reference = 267,
  anon_sym_reflected = 268,
  anon_sym_rejects = 269,
  anon_sym_residential = 270,
  anon_sym_rural = 271,
  anon_sym_series = 272,
  anon_sym_shared = 273,
  anon_sym_sheet = 274,
  anon_sym_shunt = 275,
  anon_sym_sinad = 276,
  anon_sym_since = 277,
  anon_sym_snr = 278,
  anon_sym_spread = 279,
  anon_sym_ssb = 280,
  anon_sym_ssb_DASHprocessed = 281,
  anon_sym_then = 282,
  anon_sym_title = 283,
  anon_sym_to = 284,
  anon_sym_total = 285,
  anon_sym_transmit_DASHfrequency = 286,
  anon_sym_two_DASHray = 287,
  anon_sym_typical = 288,
  anon_sym_up = 289,
  anon_sym_vertical = 290,
  anon_sym_way = 291,
  anon_sym_wet = 292,
  anon_sym_wgs84 = 293,
  anon_sym_with = 294,
  anon_sym_within = 295,
  anon_sym_yes = 296,
  anon_sym_COMMA = 297,
  anon_sym_EQ = 298,
  anon_sym_u00b1 = 299,
  anon_sym_PLUS_SLASH_DASH = 300,
  anon_sym_LPAREN = 301,
  anon_sym_RPAREN = 302,
  anon_sym_DASH = 303,
  anon_sym_u2212 = 304,
  anon_sym_u2013 = 305,
  anon_sym_PLUS = 306,
  anon_sym_STAR = 307,
  anon_sym_SLASH = 308,
  anon_sym_CARET = 309,
  sym__glued = 310,
  sym_date = 311,
  sym_dms = 312,
  sym_number = 313,
  aux_sym_unit_token1 = 314,
  aux_sym_unit_token2 = 315,
  aux_sym_unit_token3 = 316,
  aux_sym_unit_token4 = 317,
  aux_sym_unit_token5 = 318,
  aux_sym_unit_token6 = 319,
  anon_sym_wavelengths = 320,
  anon_sym_wavelength = 321,
  aux_sym_unit_token7 = 322,
  aux_sym_unit_token8 = 323,
  aux_sym_unit_token9 = 324,
  aux_sym_unit_token10 = 325,
  aux_sym_unit_token11 = 326,
  aux_sym_unit_token12 = 327,
  anon_sym_ohm_DASHm = 328,
  aux_sym_unit_token13 = 329,
  aux_sym_unit_token14 = 330,
  aux_sym_unit_token15 = 331,
  anon_sym_degC = 332,
  anon_sym_degF = 333,
  anon_sym_ohms = 334,
  aux_sym_unit_token16 = 335,
  aux_sym_unit_token17 = 336,
  aux_sym_unit_token18 = 337,
  anon_sym_deg = 338,
  anon_sym_min = 339,
  anon_sym_ohm = 340,
  anon_sym_cm = 341,
  anon_sym_kV = 342,
  anon_sym_mi = 343,
  anon_sym_mm = 344,
  anon_sym_ms = 345,
  anon_sym_ns = 346,
  anon_sym_uV = 347,
  anon_sym_uW = 348,
  anon_sym_us = 349,
  anon_sym_yd = 350,
  anon_sym_u00b0C = 351,
  anon_sym_u00b0F = 352,
  anon_sym_u00b5V = 353,
  anon_sym_u00b5W = 354,
  anon_sym_u00b5s = 355,
  anon_sym_u03a9m = 356,
  anon_sym_u03bcV = 357,
  anon_sym_u03bcW = 358,
  anon_sym_u03bcs = 359,
  anon_sym_u2126m = 360,
  anon_sym_PERCENT = 361,
  anon_sym_A = 362,
  anon_sym_V = 363,
  anon_sym_W = 364,
  anon_sym_h = 365,
  anon_sym_s = 366,
  anon_sym_u00b0 = 367,
  anon_sym_u03a9 = 368,
  anon_sym_u03bb = 369,
  anon_sym_u2126 = 370,
  sym_root = 371,
  sym_digit_name = 372,
  sym_string = 373,
  sym_comment = 374,
  sym_source_file = 375,
  sym__line = 376,
  sym__end = 377,
  sym_statement = 378,
  sym_block_statement = 379,
  sym_block = 380,
  sym__head = 381,
  sym_keyword = 382,
  sym_only_word = 383,
  sym_word = 384,
  sym__value = 385,
  sym_range = 386,
  sym_tolerance = 387,
  sym_coverage = 388,
  sym__expression = 389,
  sym_parenthesized_expression = 390,
  sym_negation = 391,
  sym_binary_expression = 392,
  sym_quantity = 393,
  sym_unit = 394,
  aux_sym_source_file_repeat1 = 395,
  aux_sym__head_repeat1 = 396,
};

static const char * const ts_symbol_names[] = {
  [ts_builtin_sym_end] = "end",
  [sym_name] = "name",
  [aux_sym__end_token1] = "_end_token1",
  [anon_sym_SEMI] = ";",
  [anon_sym_LBRACE] = "{",
  [anon_sym_RBRACE] = "}",
  [anon_sym_use] = "use",
  [anon_sym_band] = "band",
  [anon_sym_let] = "let",
  [anon_sym_cable] = "cable",
  [anon_sym_connector] = "connector",
  [anon_sym_device] = "device",
  [anon_sym_instrument] = "instrument",
  [anon_sym_session] = "session",
  [anon_sym_station] = "station",
  [anon_sym_chain] = "chain",
  [anon_sym_licence] = "licence",
  [anon_sym_rules] = "rules",
  [anon_sym_link] = "link",
  [anon_sym_variant] = "variant",
  [anon_sym_accept] = "accept",
  [anon_sym_transmit] = "transmit",
  [anon_sym_receive] = "receive",
  [anon_sym_impedance] = "impedance",
  [anon_sym_velocity] = "velocity",
  [anon_sym_loss] = "loss",
  [anon_sym_construction] = "construction",
  [anon_sym_wires] = "wires",
  [anon_sym_valid] = "valid",
  [anon_sym_accuracy] = "accuracy",
  [anon_sym_rating] = "rating",
  [anon_sym_voltage] = "voltage",
  [anon_sym_size] = "size",
  [anon_sym_conductor] = "conductor",
  [anon_sym_source] = "source",
  [anon_sym_recalled] = "recalled",
  [anon_sym_joins] = "joins",
  [anon_sym_limit] = "limit",
  [anon_sym_family] = "family",
  [anon_sym_bump] = "bump",
  [anon_sym_return_DASHloss] = "return-loss",
  [anon_sym_swr] = "swr",
  [anon_sym_kind] = "kind",
  [anon_sym_high] = "high",
  [anon_sym_low] = "low",
  [anon_sym_port] = "port",
  [anon_sym_from] = "from",
  [anon_sym_isolation] = "isolation",
  [anon_sym_ratio] = "ratio",
  [anon_sym_split] = "split",
  [anon_sym_tee] = "tee",
  [anon_sym_reversed] = "reversed",
  [anon_sym_passes] = "passes",
  [anon_sym_gain] = "gain",
  [anon_sym_noise] = "noise",
  [anon_sym_excess] = "excess",
  [anon_sym_ways] = "ways",
  [anon_sym_coupled] = "coupled",
  [anon_sym_calibrated] = "calibrated",
  [anon_sym_scale] = "scale",
  [anon_sym_resolution] = "resolution",
  [anon_sym_due] = "due",
  [anon_sym_linearity] = "linearity",
  [anon_sym_repeatability] = "repeatability",
  [anon_sym_directivity] = "directivity",
  [anon_sym_certificate] = "certificate",
  [anon_sym_load] = "load",
  [anon_sym_read] = "read",
  [anon_sym_temperature] = "temperature",
  [anon_sym_generator] = "generator",
  [anon_sym_drift] = "drift",
  [anon_sym_piece] = "piece",
  [anon_sym_readings] = "readings",
  [anon_sym_resonance] = "resonance",
  [anon_sym_delay] = "delay",
  [anon_sym_phase] = "phase",
  [anon_sym_adapter] = "adapter",
  [anon_sym_position] = "position",
  [anon_sym_ground] = "ground",
  [anon_sym_place] = "place",
  [anon_sym_under] = "under",
  [anon_sym_beside] = "beside",
  [anon_sym_spot] = "spot",
  [anon_sym_alone] = "alone",
  [anon_sym_site_DASHnoise] = "site-noise",
  [anon_sym_transmitter] = "transmitter",
  [anon_sym_receiver] = "receiver",
  [anon_sym_transceiver] = "transceiver",
  [anon_sym_run] = "run",
  [anon_sym_jumper] = "jumper",
  [anon_sym_tail] = "tail",
  [anon_sym_pad] = "pad",
  [anon_sym_filter] = "filter",
  [anon_sym_isolator] = "isolator",
  [anon_sym_circulator] = "circulator",
  [anon_sym_protector] = "protector",
  [anon_sym_switch] = "switch",
  [anon_sym_coupler] = "coupler",
  [anon_sym_meter] = "meter",
  [anon_sym_balun] = "balun",
  [anon_sym_tuner] = "tuner",
  [anon_sym_duplexer] = "duplexer",
  [anon_sym_diplexer] = "diplexer",
  [anon_sym_combiner] = "combiner",
  [anon_sym_divider] = "divider",
  [anon_sym_amplifier] = "amplifier",
  [anon_sym_preamplifier] = "preamplifier",
  [anon_sym_antenna] = "antenna",
  [anon_sym_branches] = "branches",
  [anon_sym_expect] = "expect",
  [anon_sym_authority] = "authority",
  [anon_sym_jurisdiction] = "jurisdiction",
  [anon_sym_service] = "service",
  [anon_sym_edition] = "edition",
  [anon_sym_dated] = "dated",
  [anon_sym_until] = "until",
  [anon_sym_holder] = "holder",
  [anon_sym_class] = "class",
  [anon_sym_ask] = "ask",
  [anon_sym_threshold] = "threshold",
  [anon_sym_fixed] = "fixed",
  [anon_sym_condition] = "condition",
  [anon_sym_reflection] = "reflection",
  [anon_sym_field] = "field",
  [anon_sym_hop] = "hop",
  [anon_sym_profile] = "profile",
  [anon_sym_distance] = "distance",
  [anon_sym_k_DASHfactor] = "k-factor",
  [anon_sym_need] = "need",
  [anon_sym_model] = "model",
  [anon_sym_coverage] = "coverage",
  [anon_sym_take] = "take",
  [anon_sym_put] = "put",
  [anon_sym_branch] = "branch",
  [anon_sym_inner] = "inner",
  [anon_sym_outer] = "outer",
  [anon_sym_permittivity] = "permittivity",
  [anon_sym_loss_DASHtangent] = "loss-tangent",
  [anon_sym_strand] = "strand",
  [anon_sym_strand_DASHdiameter] = "strand-diameter",
  [anon_sym_braid] = "braid",
  [anon_sym_resistivity] = "resistivity",
  [anon_sym_inner_DASHresistivity] = "inner-resistivity",
  [anon_sym_outer_DASHresistivity] = "outer-resistivity",
  [anon_sym_diameter] = "diameter",
  [anon_sym_spacing] = "spacing",
  [anon_sym_baseline] = "baseline",
  [anon_sym_through] = "through",
  [anon_sym_open] = "open",
  [anon_sym_short] = "short",
  [anon_sym_equalise] = "equalise",
  [anon_sym_power] = "power",
  [anon_sym_mode] = "mode",
  [anon_sym_duty] = "duty",
  [anon_sym_keyed] = "keyed",
  [anon_sym_foldback] = "foldback",
  [anon_sym_bandwidth] = "bandwidth",
  [anon_sym_sensitivity] = "sensitivity",
  [anon_sym_blocking] = "blocking",
  [anon_sym_efficiency] = "efficiency",
  [anon_sym_height] = "height",
  [anon_sym_pattern] = "pattern",
  [anon_sym_haat] = "haat",
  [anon_sym_radius] = "radius",
  [anon_sym_fails] = "fails",
  [anon_sym_GHz] = "GHz",
  [anon_sym_Hz] = "Hz",
  [anon_sym_MHz] = "MHz",
  [anon_sym_above] = "above",
  [anon_sym_added] = "added",
  [anon_sym_after] = "after",
  [anon_sym_against] = "against",
  [anon_sym_agl] = "agl",
  [anon_sym_allocated] = "allocated",
  [anon_sym_am] = "am",
  [anon_sym_ambient] = "ambient",
  [anon_sym_amsl] = "amsl",
  [anon_sym_apart] = "apart",
  [anon_sym_at] = "at",
  [anon_sym_averaging] = "averaging",
  [anon_sym_below] = "below",
  [anon_sym_beyond] = "beyond",
  [anon_sym_blank] = "blank",
  [anon_sym_bow] = "bow",
  [anon_sym_bullington] = "bullington",
  [anon_sym_by] = "by",
  [anon_sym_carrier] = "carrier",
  [anon_sym_cascade] = "cascade",
  [anon_sym_city] = "city",
  [anon_sym_clad] = "clad",
  [anon_sym_confidence] = "confidence",
  [anon_sym_corrected] = "corrected",
  [anon_sym_cw] = "cw",
  [anon_sym_dB] = "dB",
  [anon_sym_dBW] = "dBW",
  [anon_sym_dBd] = "dBd",
  [anon_sym_dBi] = "dBi",
  [anon_sym_dBm] = "dBm",
  [anon_sym_data] = "data",
  [anon_sym_date] = "date",
  [anon_sym_datum] = "datum",
  [anon_sym_dc_DASHinput] = "dc-input",
  [anon_sym_degrees] = "degrees",
  [anon_sym_delivered] = "delivered",
  [anon_sym_desense] = "desense",
  [anon_sym_displayed] = "displayed",
  [anon_sym_dms] = "dms",
  [anon_sym_down] = "down",
  [anon_sym_eirp] = "eirp",
  [anon_sym_elevation] = "elevation",
  [anon_sym_ends] = "ends",
  [anon_sym_erp] = "erp",
  [anon_sym_etrs89] = "etrs89",
  [anon_sym_figure] = "figure",
  [anon_sym_fm] = "fm",
  [anon_sym_for] = "for",
  [anon_sym_forward] = "forward",
  [anon_sym_free_DASHspace] = "free-space",
  [anon_sym_frequency] = "frequency",
  [anon_sym_ft] = "ft",
  [anon_sym_full] = "full",
  [anon_sym_guess] = "guess",
  [anon_sym_hata_DASHopen] = "hata-open",
  [anon_sym_hata_DASHsuburban] = "hata-suburban",
  [anon_sym_hata_DASHurban] = "hata-urban",
  [anon_sym_height_DASHamsl] = "height-amsl",
  [anon_sym_horizontal] = "horizontal",
  [anon_sym_if] = "if",
  [anon_sym_in] = "in",
  [anon_sym_input] = "input",
  [anon_sym_instead] = "instead",
  [anon_sym_k] = "k",
  [anon_sym_kHz] = "kHz",
  [anon_sym_kW] = "kW",
  [anon_sym_km] = "km",
  [anon_sym_latitude] = "latitude",
  [anon_sym_longitude] = "longitude",
  [anon_sym_m] = "m",
  [anon_sym_mW] = "mW",
  [anon_sym_maximum] = "maximum",
  [anon_sym_mean] = "mean",
  [anon_sym_medium] = "medium",
  [anon_sym_nad27] = "nad27",
  [anon_sym_nad83] = "nad83",
  [anon_sym_net] = "net",
  [anon_sym_no] = "no",
  [anon_sym_nominal] = "nominal",
  [anon_sym_occupational] = "occupational",
  [anon_sym_of] = "of",
  [anon_sym_offset] = "offset",
  [anon_sym_on] = "on",
  [anon_sym_one_DASHedge] = "one-edge",
  [anon_sym_out] = "out",
  [anon_sym_output] = "output",
  [anon_sym_over] = "over",
  [anon_sym_pep] = "pep",
  [anon_sym_per] = "per",
  [anon_sym_places] = "places",
  [anon_sym_public] = "public",
  [anon_sym_quiet_DASHrural] = "quiet-rural",
  [anon_sym_quieting] = "quieting",
  [anon_sym_rated] = "rated",
  [anon_sym_reactance] = "reactance",
  [anon_sym_reading] = "reading",
  [anon_sym_realized] = "realized",
  [anon_sym_receive_DASHfrequency] = "receive-frequency",
  [anon_sym_receive_DASHloss] = "receive-loss",
  [anon_sym_reference] = "reference",
  [anon_sym_reflected] = "reflected",
  [anon_sym_rejects] = "rejects",
  [anon_sym_residential] = "residential",
  [anon_sym_rural] = "rural",
  [anon_sym_series] = "series",
  [anon_sym_shared] = "shared",
  [anon_sym_sheet] = "sheet",
  [anon_sym_shunt] = "shunt",
  [anon_sym_sinad] = "sinad",
  [anon_sym_since] = "since",
  [anon_sym_snr] = "snr",
  [anon_sym_spread] = "spread",
  [anon_sym_ssb] = "ssb",
  [anon_sym_ssb_DASHprocessed] = "ssb-processed",
  [anon_sym_then] = "then",
  [anon_sym_title] = "title",
  [anon_sym_to] = "to",
  [anon_sym_total] = "total",
  [anon_sym_transmit_DASHfrequency] = "transmit-frequency",
  [anon_sym_two_DASHray] = "two-ray",
  [anon_sym_typical] = "typical",
  [anon_sym_up] = "up",
  [anon_sym_vertical] = "vertical",
  [anon_sym_way] = "way",
  [anon_sym_wet] = "wet",
  [anon_sym_wgs84] = "wgs84",
  [anon_sym_with] = "with",
  [anon_sym_within] = "within",
  [anon_sym_yes] = "yes",
  [anon_sym_COMMA] = ",",
  [anon_sym_EQ] = "=",
  [anon_sym_u00b1] = "\u00b1",
  [anon_sym_PLUS_SLASH_DASH] = "+/-",
  [anon_sym_LPAREN] = "(",
  [anon_sym_RPAREN] = ")",
  [anon_sym_DASH] = "-",
  [anon_sym_u2212] = "\u2212",
  [anon_sym_u2013] = "\u2013",
  [anon_sym_PLUS] = "+",
  [anon_sym_STAR] = "*",
  [anon_sym_SLASH] = "/",
  [anon_sym_CARET] = "^",
  [sym__glued] = "_glued",
  [sym_date] = "date",
  [sym_dms] = "dms",
  [sym_number] = "number",
  [aux_sym_unit_token1] = "unit_token1",
  [aux_sym_unit_token2] = "unit_token2",
  [aux_sym_unit_token3] = "unit_token3",
  [aux_sym_unit_token4] = "unit_token4",
  [aux_sym_unit_token5] = "unit_token5",
  [aux_sym_unit_token6] = "unit_token6",
  [anon_sym_wavelengths] = "wavelengths",
  [anon_sym_wavelength] = "wavelength",
  [aux_sym_unit_token7] = "unit_token7",
  [aux_sym_unit_token8] = "unit_token8",
  [aux_sym_unit_token9] = "unit_token9",
  [aux_sym_unit_token10] = "unit_token10",
  [aux_sym_unit_token11] = "unit_token11",
  [aux_sym_unit_token12] = "unit_token12",
  [anon_sym_ohm_DASHm] = "ohm-m",
  [aux_sym_unit_token13] = "unit_token13",
  [aux_sym_unit_token14] = "unit_token14",
  [aux_sym_unit_token15] = "unit_token15",
  [anon_sym_degC] = "degC",
  [anon_sym_degF] = "degF",
  [anon_sym_ohms] = "ohms",
  [aux_sym_unit_token16] = "unit_token16",
  [aux_sym_unit_token17] = "unit_token17",
  [aux_sym_unit_token18] = "unit_token18",
  [anon_sym_deg] = "deg",
  [anon_sym_min] = "min",
  [anon_sym_ohm] = "ohm",
  [anon_sym_cm] = "cm",
  [anon_sym_kV] = "kV",
  [anon_sym_mi] = "mi",
  [anon_sym_mm] = "mm",
  [anon_sym_ms] = "ms",
  [anon_sym_ns] = "ns",
  [anon_sym_uV] = "uV",
  [anon_sym_uW] = "uW",
  [anon_sym_us] = "us",
  [anon_sym_yd] = "yd",
  [anon_sym_u00b0C] = "\u00b0C",
  [anon_sym_u00b0F] = "\u00b0F",
  [anon_sym_u00b5V] = "\u00b5V",
  [anon_sym_u00b5W] = "\u00b5W",
  [anon_sym_u00b5s] = "\u00b5s",
  [anon_sym_u03a9m] = "\u03a9m",
  [anon_sym_u03bcV] = "\u03bcV",
  [anon_sym_u03bcW] = "\u03bcW",
  [anon_sym_u03bcs] = "\u03bcs",
  [anon_sym_u2126m] = "\u2126m",
  [anon_sym_PERCENT] = "%",
  [anon_sym_A] = "A",
  [anon_sym_V] = "V",
  [anon_sym_W] = "W",
  [anon_sym_h] = "h",
  [anon_sym_s] = "s",
  [anon_sym_u00b0] = "\u00b0",
  [anon_sym_u03a9] = "\u03a9",
  [anon_sym_u03bb] = "\u03bb",
  [anon_sym_u2126] = "\u2126",
  [sym_root] = "unit",
  [sym_digit_name] = "name",
  [sym_string] = "string",
  [sym_comment] = "comment",
  [sym_source_file] = "source_file",
  [sym__line] = "_line",
  [sym__end] = "_end",
  [sym_statement] = "statement",
  [sym_block_statement] = "statement",
  [sym_block] = "block",
  [sym__head] = "_head",
  [sym_keyword] = "keyword",
  [sym_only_word] = "name",
  [sym_word] = "word",
  [sym__value] = "_value",
  [sym_range] = "range",
  [sym_tolerance] = "tolerance",
  [sym_coverage] = "coverage",
  [sym__expression] = "_expression",
  [sym_parenthesized_expression] = "parenthesized_expression",
  [sym_negation] = "negation",
  [sym_binary_expression] = "binary_expression",
  [sym_quantity] = "quantity",
  [sym_unit] = "unit",
  [aux_sym_source_file_repeat1] = "source_file_repeat1",
  [aux_sym__head_repeat1] = "_head_repeat1",
};

static const TSSymbol ts_symbol_map[] = {
  [ts_builtin_sym_end] = ts_builtin_sym_end,
  [sym_name] = sym_name,
  [aux_sym__end_token1] = aux_sym__end_token1,
  [anon_sym_SEMI] = anon_sym_SEMI,
  [anon_sym_LBRACE] = anon_sym_LBRACE,
  [anon_sym_RBRACE] = anon_sym_RBRACE,
  [anon_sym_use] = anon_sym_use,
  [anon_sym_band] = anon_sym_band,
  [anon_sym_let] = anon_sym_let,
  [anon_sym_cable] = anon_sym_cable,
  [anon_sym_connector] = anon_sym_connector,
  [anon_sym_device] = anon_sym_device,
  [anon_sym_instrument] = anon_sym_instrument,
  [anon_sym_session] = anon_sym_session,
  [anon_sym_station] = anon_sym_station,
  [anon_sym_chain] = anon_sym_chain,
  [anon_sym_licence] = anon_sym_licence,
  [anon_sym_rules] = anon_sym_rules,
  [anon_sym_link] = anon_sym_link,
  [anon_sym_variant] = anon_sym_variant,
  [anon_sym_accept] = anon_sym_accept,
  [anon_sym_transmit] = anon_sym_transmit,
  [anon_sym_receive] = anon_sym_receive,
  [anon_sym_impedance] = anon_sym_impedance,
  [anon_sym_velocity] = anon_sym_velocity,
  [anon_sym_loss] = anon_sym_loss,
  [anon_sym_construction] = anon_sym_construction,
  [anon_sym_wires] = anon_sym_wires,
  [anon_sym_valid] = anon_sym_valid,
  [anon_sym_accuracy] = anon_sym_accuracy,
  [anon_sym_rating] = anon_sym_rating,
  [anon_sym_voltage] = anon_sym_voltage,
  [anon_sym_size] = anon_sym_size,
  [anon_sym_conductor] = anon_sym_conductor,
  [anon_sym_source] = anon_sym_source,
  [anon_sym_recalled] = anon_sym_recalled,
  [anon_sym_joins] = anon_sym_joins,
  [anon_sym_limit] = anon_sym_limit,
  [anon_sym_family] = anon_sym_family,
  [anon_sym_bump] = anon_sym_bump,
  [anon_sym_return_DASHloss] = anon_sym_return_DASHloss,
  [anon_sym_swr] = anon_sym_swr,
  [anon_sym_kind] = anon_sym_kind,
  [anon_sym_high] = anon_sym_high,
  [anon_sym_low] = anon_sym_low,
  [anon_sym_port] = anon_sym_port,
  [anon_sym_from] = anon_sym_from,
  [anon_sym_isolation] = anon_sym_isolation,
  [anon_sym_ratio] = anon_sym_ratio,
  [anon_sym_split] = anon_sym_split,
  [anon_sym_tee] = anon_sym_tee,
  [anon_sym_reversed] = anon_sym_reversed,
  [anon_sym_passes] = anon_sym_passes,
  [anon_sym_gain] = anon_sym_gain,
  [anon_sym_noise] = anon_sym_noise,
  [anon_sym_excess] = anon_sym_excess,
  [anon_sym_ways] = anon_sym_ways,
  [anon_sym_coupled] = anon_sym_coupled,
  [anon_sym_calibrated] = anon_sym_calibrated,
  [anon_sym_scale] = anon_sym_scale,
  [anon_sym_resolution] = anon_sym_resolution,
  [anon_sym_due] = anon_sym_due,
  [anon_sym_linearity] = anon_sym_linearity,
  [anon_sym_repeatability] = anon_sym_repeatability,
  [anon_sym_directivity] = anon_sym_directivity,
  [anon_sym_certificate] = anon_sym_certificate,
  [anon_sym_load] = anon_sym_load,
  [anon_sym_read] = anon_sym_read,
  [anon_sym_temperature] = anon_sym_temperature,
  [anon_sym_generator] = anon_sym_generator,
  [anon_sym_drift] = anon_sym_drift,
  [anon_sym_piece] = anon_sym_piece,
  [anon_sym_readings] = anon_sym_readings,
  [anon_sym_resonance] = anon_sym_resonance,
  [anon_sym_delay] = anon_sym_delay,
  [anon_sym_phase] = anon_sym_phase,
  [anon_sym_adapter] = anon_sym_adapter,
  [anon_sym_position] = anon_sym_position,
  [anon_sym_ground] = anon_sym_ground,
  [anon_sym_place] = anon_sym_place,
  [anon_sym_under] = anon_sym_under,
  [anon_sym_beside] = anon_sym_beside,
  [anon_sym_spot] = anon_sym_spot,
  [anon_sym_alone] = anon_sym_alone,
  [anon_sym_site_DASHnoise] = anon_sym_site_DASHnoise,
  [anon_sym_transmitter] = anon_sym_transmitter,
  [anon_sym_receiver] = anon_sym_receiver,
  [anon_sym_transceiver] = anon_sym_transceiver,
  [anon_sym_run] = anon_sym_run,
  [anon_sym_jumper] = anon_sym_jumper,
  [anon_sym_tail] = anon_sym_tail,
  [anon_sym_pad] = anon_sym_pad,
  [anon_sym_filter] = anon_sym_filter,
  [anon_sym_isolator] = anon_sym_isolator,
  [anon_sym_circulator] = anon_sym_circulator,
  [anon_sym_protector] = anon_sym_protector,
  [anon_sym_switch] = anon_sym_switch,
  [anon_sym_coupler] = anon_sym_coupler,
  [anon_sym_meter] = anon_sym_meter,
  [anon_sym_balun] = anon_sym_balun,
  [anon_sym_tuner] = anon_sym_tuner,
  [anon_sym_duplexer] = anon_sym_duplexer,
  [anon_sym_diplexer] = anon_sym_diplexer,
  [anon_sym_combiner] = anon_sym_combiner,
  [anon_sym_divider] = anon_sym_divider,
  [anon_sym_amplifier] = anon_sym_amplifier,
  [anon_sym_preamplifier] = anon_sym_preamplifier,
  [anon_sym_antenna] = anon_sym_antenna,
  [anon_sym_branches] = anon_sym_branches,
  [anon_sym_expect] = anon_sym_expect,
  [anon_sym_authority] = anon_sym_authority,
  [anon_sym_jurisdiction] = anon_sym_jurisdiction,
  [anon_sym_service] = anon_sym_service,
  [anon_sym_edition] = anon_sym_edition,
  [anon_sym_dated] = anon_sym_dated,
  [anon_sym_until] = anon_sym_until,
  [anon_sym_holder] = anon_sym_holder,
  [anon_sym_class] = anon_sym_class,
  [anon_sym_ask] = anon_sym_ask,
  [anon_sym_threshold] = anon_sym_threshold,
  [anon_sym_fixed] = anon_sym_fixed,
  [anon_sym_condition] = anon_sym_condition,
  [anon_sym_reflection] = anon_sym_reflection,
  [anon_sym_field] = anon_sym_field,
  [anon_sym_hop] = anon_sym_hop,
  [anon_sym_profile] = anon_sym_profile,
  [anon_sym_distance] = anon_sym_distance,
  [anon_sym_k_DASHfactor] = anon_sym_k_DASHfactor,
  [anon_sym_need] = anon_sym_need,
  [anon_sym_model] = anon_sym_model,
  [anon_sym_coverage] = anon_sym_coverage,
  [anon_sym_take] = anon_sym_take,
  [anon_sym_put] = anon_sym_put,
  [anon_sym_branch] = anon_sym_branch,
  [anon_sym_inner] = anon_sym_inner,
  [anon_sym_outer] = anon_sym_outer,
  [anon_sym_permittivity] = anon_sym_permittivity,
  [anon_sym_loss_DASHtangent] = anon_sym_loss_DASHtangent,
  [anon_sym_strand] = anon_sym_strand,
  [anon_sym_strand_DASHdiameter] = anon_sym_strand_DASHdiameter,
  [anon_sym_braid] = anon_sym_braid,
  [anon_sym_resistivity] = anon_sym_resistivity,
  [anon_sym_inner_DASHresistivity] = anon_sym_inner_DASHresistivity,
  [anon_sym_outer_DASHresistivity] = anon_sym_outer_DASHresistivity,
  [anon_sym_diameter] = anon_sym_diameter,
  [anon_sym_spacing] = anon_sym_spacing,
  [anon_sym_baseline] = anon_sym_baseline,
  [anon_sym_through] = anon_sym_through,
  [anon_sym_open] = anon_sym_open,
  [anon_sym_short] = anon_sym_short,
  [anon_sym_equalise] = anon_sym_equalise,
  [anon_sym_power] = anon_sym_power,
  [anon_sym_mode] = anon_sym_mode,
  [anon_sym_duty] = anon_sym_duty,
  [anon_sym_keyed] = anon_sym_keyed,
  [anon_sym_foldback] = anon_sym_foldback,
  [anon_sym_bandwidth] = anon_sym_bandwidth,
  [anon_sym_sensitivity] = anon_sym_sensitivity,
  [anon_sym_blocking] = anon_sym_blocking,
  [anon_sym_efficiency] = anon_sym_efficiency,
  [anon_sym_height] = anon_sym_height,
  [anon_sym_pattern] = anon_sym_pattern,
  [anon_sym_haat] = anon_sym_haat,
  [anon_sym_radius] = anon_sym_radius,
  [anon_sym_fails] = anon_sym_fails,
  [anon_sym_GHz] = anon_sym_GHz,
  [anon_sym_Hz] = anon_sym_Hz,
  [anon_sym_MHz] = anon_sym_MHz,
  [anon_sym_above] = anon_sym_above,
  [anon_sym_added] = anon_sym_added,
  [anon_sym_after] = anon_sym_after,
  [anon_sym_against] = anon_sym_against,
  [anon_sym_agl] = anon_sym_agl,
  [anon_sym_allocated] = anon_sym_allocated,
  [anon_sym_am] = anon_sym_am,
  [anon_sym_ambient] = anon_sym_ambient,
  [anon_sym_amsl] = anon_sym_amsl,
  [anon_sym_apart] = anon_sym_apart,
  [anon_sym_at] = anon_sym_at,
  [anon_sym_averaging] = anon_sym_averaging,
  [anon_sym_below] = anon_sym_below,
  [anon_sym_beyond] = anon_sym_beyond,
  [anon_sym_blank] = anon_sym_blank,
  [anon_sym_bow] = anon_sym_bow,
  [anon_sym_bullington] = anon_sym_bullington,
  [anon_sym_by] = anon_sym_by,
  [anon_sym_carrier] = anon_sym_carrier,
  [anon_sym_cascade] = anon_sym_cascade,
  [anon_sym_city] = anon_sym_city,
  [anon_sym_clad] = anon_sym_clad,
  [anon_sym_confidence] = anon_sym_confidence,
  [anon_sym_corrected] = anon_sym_corrected,
  [anon_sym_cw] = anon_sym_cw,
  [anon_sym_dB] = anon_sym_dB,
  [anon_sym_dBW] = anon_sym_dBW,
  [anon_sym_dBd] = anon_sym_dBd,
  [anon_sym_dBi] = anon_sym_dBi,
  [anon_sym_dBm] = anon_sym_dBm,
  [anon_sym_data] = anon_sym_data,
  [anon_sym_date] = anon_sym_date,
  [anon_sym_datum] = anon_sym_datum,
  [anon_sym_dc_DASHinput] = anon_sym_dc_DASHinput,
  [anon_sym_degrees] = anon_sym_degrees,
  [anon_sym_delivered] = anon_sym_delivered,
  [anon_sym_desense] = anon_sym_desense,
  [anon_sym_displayed] = anon_sym_displayed,
  [anon_sym_dms] = anon_sym_dms,
  [anon_sym_down] = anon_sym_down,
  [anon_sym_eirp] = anon_sym_eirp,
  [anon_sym_elevation] = anon_sym_elevation,
  [anon_sym_ends] = anon_sym_ends,
  [anon_sym_erp] = anon_sym_erp,
  [anon_sym_etrs89] = anon_sym_etrs89,
  [anon_sym_figure] = anon_sym_figure,
  [anon_sym_fm] = anon_sym_fm,
  [anon_sym_for] = anon_sym_for,
  [anon_sym_forward] = anon_sym_forward,
  [anon_sym_free_DASHspace] = anon_sym_free_DASHspace,
  [anon_sym_frequency] = anon_sym_frequency,
  [anon_sym_ft] = anon_sym_ft,
  [anon_sym_full] = anon_sym_full,
  [anon_sym_guess] = anon_sym_guess,
  [anon_sym_hata_DASHopen] = anon_sym_hata_DASHopen,
  [anon_sym_hata_DASHsuburban] = anon_sym_hata_DASHsuburban,
  [anon_sym_hata_DASHurban] = anon_sym_hata_DASHurban,
  [anon_sym_height_DASHamsl] = anon_sym_height_DASHamsl,
  [anon_sym_horizontal] = anon_sym_horizontal,
  [anon_sym_if] = anon_sym_if,
  [anon_sym_in] = anon_sym_in,
  [anon_sym_input] = anon_sym_input,
  [anon_sym_instead] = anon_sym_instead,
  [anon_sym_k] = anon_sym_k,
  [anon_sym_kHz] = anon_sym_kHz,
  [anon_sym_kW] = anon_sym_kW,
  [anon_sym_km] = anon_sym_km,
  [anon_sym_latitude] = anon_sym_latitude,
  [anon_sym_longitude] = anon_sym_longitude,
  [anon_sym_m] = anon_sym_m,
  [anon_sym_mW] = anon_sym_mW,
  [anon_sym_maximum] = anon_sym_maximum,
  [anon_sym_mean] = anon_sym_mean,
  [anon_sym_medium] = anon_sym_medium,
  [anon_sym_nad27] = anon_sym_nad27,
  [anon_sym_nad83] = anon_sym_nad83,
  [anon_sym_net] = anon_sym_net,
  [anon_sym_no] = anon_sym_no,
  [anon_sym_nominal] = anon_sym_nominal,
  [anon_sym_occupational] = anon_sym_occupational,
  [anon_sym_of] = anon_sym_of,
  [anon_sym_offset] = anon_sym_offset,
  [anon_sym_on] = anon_sym_on,
  [anon_sym_one_DASHedge] = anon_sym_one_DASHedge,
  [anon_sym_out] = anon_sym_out,
  [anon_sym_output] = anon_sym_output,
  [anon_sym_over] = anon_sym_over,
  [anon_sym_pep] = anon_sym_pep,
  [anon_sym_per] = anon_sym_per,
  [anon_sym_places] = anon_sym_places,
  [anon_sym_public] = anon_sym_public,
  [anon_sym_quiet_DASHrural] = anon_sym_quiet_DASHrural,
  [anon_sym_quieting] = anon_sym_quieting,
  [anon_sym_rated] = anon_sym_rated,
  [anon_sym_reactance] = anon_sym_reactance,
  [anon_sym_reading] = anon_sym_reading,
  [anon_sym_realized] = anon_sym_realized,
  [anon_sym_receive_DASHfrequency] = anon_sym_receive_DASHfrequency,
  [anon_sym_receive_DASHloss] = anon_sym_receive_DASHloss,
  [anon_sym_reference] = anon_sym_reference,
  [anon_sym_reflected] = anon_sym_reflected,
  [anon_sym_rejects] = anon_sym_rejects,
  [anon_sym_residential] = anon_sym_residential,
  [anon_sym_rural] = anon_sym_rural,
  [anon_sym_series] = anon_sym_series,
  [anon_sym_shared] = anon_sym_shared,
  [anon_sym_sheet] = anon_sym_sheet,
  [anon_sym_shunt] = anon_sym_shunt,
  [anon_sym_sinad] = anon_sym_sinad,
  [anon_sym_since] = anon_sym_since,
  [anon_sym_snr] = anon_sym_snr,
  [anon_sym_spread] = anon_sym_spread,
  [anon_sym_ssb] = anon_sym_ssb,
  [anon_sym_ssb_DASHprocessed] = anon_sym_ssb_DASHprocessed,
  [anon_sym_then] = anon_sym_then,
  [anon_sym_title] = anon_sym_title,
  [anon_sym_to] = anon_sym_to,
  [anon_sym_total] = anon_sym_total,
  [anon_sym_transmit_DASHfrequency] = anon_sym_transmit_DASHfrequency,
  [anon_sym_two_DASHray] = anon_sym_two_DASHray,
  [anon_sym_typical] = anon_sym_typical,
  [anon_sym_up] = anon_sym_up,
  [anon_sym_vertical] = anon_sym_vertical,
  [anon_sym_way] = anon_sym_way,
  [anon_sym_wet] = anon_sym_wet,
  [anon_sym_wgs84] = anon_sym_wgs84,
  [anon_sym_with] = anon_sym_with,
  [anon_sym_within] = anon_sym_within,
  [anon_sym_yes] = anon_sym_yes,
  [anon_sym_COMMA] = anon_sym_COMMA,
  [anon_sym_EQ] = anon_sym_EQ,
  [anon_sym_u00b1] = anon_sym_u00b1,
  [anon_sym_PLUS_SLASH_DASH] = anon_sym_PLUS_SLASH_DASH,
  [anon_sym_LPAREN] = anon_sym_LPAREN,
  [anon_sym_RPAREN] = anon_sym_RPAREN,
  [anon_sym_DASH] = anon_sym_DASH,
  [anon_sym_u2212] = anon_sym_u2212,
  [anon_sym_u2013] = anon_sym_u2013,
  [anon_sym_PLUS] = anon_sym_PLUS,
  [anon_sym_STAR] = anon_sym_STAR,
  [anon_sym_SLASH] = anon_sym_SLASH,
  [anon_sym_CARET] = anon_sym_CARET,
  [sym__glued] = sym__glued,
  [sym_date] = sym_date,
  [sym_dms] = sym_dms,
  [sym_number] = sym_number,
  [aux_sym_unit_token1] = aux_sym_unit_token1,
  [aux_sym_unit_token2] = aux_sym_unit_token2,
  [aux_sym_unit_token3] = aux_sym_unit_token3,
  [aux_sym_unit_token4] = aux_sym_unit_token4,
  [aux_sym_unit_token5] = aux_sym_unit_token5,
  [aux_sym_unit_token6] = aux_sym_unit_token6,
  [anon_sym_wavelengths] = anon_sym_wavelengths,
  [anon_sym_wavelength] = anon_sym_wavelength,
  [aux_sym_unit_token7] = aux_sym_unit_token7,
  [aux_sym_unit_token8] = aux_sym_unit_token8,
  [aux_sym_unit_token9] = aux_sym_unit_token9,
  [aux_sym_unit_token10] = aux_sym_unit_token10,
  [aux_sym_unit_token11] = aux_sym_unit_token11,
  [aux_sym_unit_token12] = aux_sym_unit_token12,
  [anon_sym_ohm_DASHm] = anon_sym_ohm_DASHm,
  [aux_sym_unit_token13] = aux_sym_unit_token13,
  [aux_sym_unit_token14] = aux_sym_unit_token14,
  [aux_sym_unit_token15] = aux_sym_unit_token15,
  [anon_sym_degC] = anon_sym_degC,
  [anon_sym_degF] = anon_sym_degF,
  [anon_sym_ohms] = anon_sym_ohms,
  [aux_sym_unit_token16] = aux_sym_unit_token16,
  [aux_sym_unit_token17] = aux_sym_unit_token17,
  [aux_sym_unit_token18] = aux_sym_unit_token18,
  [anon_sym_deg] = anon_sym_deg,
  [anon_sym_min] = anon_sym_min,
  [anon_sym_ohm] = anon_sym_ohm,
  [anon_sym_cm] = anon_sym_cm,
  [anon_sym_kV] = anon_sym_kV,
  [anon_sym_mi] = anon_sym_mi,
  [anon_sym_mm] = anon_sym_mm,
  [anon_sym_ms] = anon_sym_ms,
  [anon_sym_ns] = anon_sym_ns,
  [anon_sym_uV] = anon_sym_uV,
  [anon_sym_uW] = anon_sym_uW,
  [anon_sym_us] = anon_sym_us,
  [anon_sym_yd] = anon_sym_yd,
  [anon_sym_u00b0C] = anon_sym_u00b0C,
  [anon_sym_u00b0F] = anon_sym_u00b0F,
  [anon_sym_u00b5V] = anon_sym_u00b5V,
  [anon_sym_u00b5W] = anon_sym_u00b5W,
  [anon_sym_u00b5s] = anon_sym_u00b5s,
  [anon_sym_u03a9m] = anon_sym_u03a9m,
  [anon_sym_u03bcV] = anon_sym_u03bcV,
  [anon_sym_u03bcW] = anon_sym_u03bcW,
  [anon_sym_u03bcs] = anon_sym_u03bcs,
  [anon_sym_u2126m] = anon_sym_u2126m,
  [anon_sym_PERCENT] = anon_sym_PERCENT,
  [anon_sym_A] = anon_sym_A,
  [anon_sym_V] = anon_sym_V,
  [anon_sym_W] = anon_sym_W,
  [anon_sym_h] = anon_sym_h,
  [anon_sym_s] = anon_sym_s,
  [anon_sym_u00b0] = anon_sym_u00b0,
  [anon_sym_u03a9] = anon_sym_u03a9,
  [anon_sym_u03bb] = anon_sym_u03bb,
  [anon_sym_u2126] = anon_sym_u2126,
  [sym_root] = sym_unit,
  [sym_digit_name] = sym_name,
  [sym_string] = sym_string,
  [sym_comment] = sym_comment,
  [sym_source_file] = sym_source_file,
  [sym__line] = sym__line,
  [sym__end] = sym__end,
  [sym_statement] = sym_statement,
  [sym_block_statement] = sym_statement,
  [sym_block] = sym_block,
  [sym__head] = sym__head,
  [sym_keyword] = sym_keyword,
  [sym_only_word] = sym_name,
  [sym_word] = sym_word,
  [sym__value] = sym__value,
  [sym_range] = sym_range,
  [sym_tolerance] = sym_tolerance,
  [sym_coverage] = sym_coverage,
  [sym__expression] = sym__expression,
  [sym_parenthesized_expression] = sym_parenthesized_expression,
  [sym_negation] = sym_negation,
  [sym_binary_expression] = sym_binary_expression,
  [sym_quantity] = sym_quantity,
  [sym_unit] = sym_unit,
  [aux_sym_source_file_repeat1] = aux_sym_source_file_repeat1,
  [aux_sym__head_repeat1] = aux_sym__head_repeat1,
};

static const TSSymbolMetadata ts_symbol_metadata[] = {
  [ts_builtin_sym_end] = {
    .visible = false,
    .named = true,
  },
  [sym_name] = {
    .visible = true,
    .named = true,
  },
  [aux_sym__end_token1] = {
    .visible = false,
    .named = false,
  },
  [anon_sym_SEMI] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_LBRACE] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_RBRACE] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_use] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_band] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_let] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_cable] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_connector] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_device] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_instrument] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_session] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_station] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_chain] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_licence] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_rules] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_link] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_variant] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_accept] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_transmit] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_receive] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_impedance] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_velocity] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_loss] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_construction] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_wires] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_valid] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_accuracy] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_rating] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_voltage] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_size] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_conductor] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_source] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_recalled] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_joins] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_limit] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_family] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_bump] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_return_DASHloss] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_swr] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_kind] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_high] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_low] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_port] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_from] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_isolation] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ratio] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_split] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_tee] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_reversed] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_passes] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_gain] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_noise] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_excess] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ways] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_coupled] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_calibrated] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_scale] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_resolution] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_due] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_linearity] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_repeatability] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_directivity] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_certificate] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_load] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_read] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_temperature] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_generator] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_drift] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_piece] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_readings] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_resonance] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_delay] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_phase] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_adapter] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_position] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ground] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_place] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_under] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_beside] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_spot] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_alone] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_site_DASHnoise] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_transmitter] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_receiver] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_transceiver] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_run] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_jumper] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_tail] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_pad] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_filter] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_isolator] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_circulator] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_protector] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_switch] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_coupler] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_meter] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_balun] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_tuner] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_duplexer] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_diplexer] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_combiner] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_divider] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_amplifier] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_preamplifier] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_antenna] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_branches] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_expect] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_authority] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_jurisdiction] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_service] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_edition] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_dated] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_until] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_holder] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_class] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ask] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_threshold] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_fixed] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_condition] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_reflection] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_field] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_hop] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_profile] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_distance] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_k_DASHfactor] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_need] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_model] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_coverage] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_take] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_put] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_branch] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_inner] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_outer] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_permittivity] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_loss_DASHtangent] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_strand] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_strand_DASHdiameter] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_braid] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_resistivity] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_inner_DASHresistivity] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_outer_DASHresistivity] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_diameter] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_spacing] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_baseline] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_through] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_open] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_short] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_equalise] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_power] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_mode] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_duty] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_keyed] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_foldback] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_bandwidth] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_sensitivity] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_blocking] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_efficiency] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_height] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_pattern] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_haat] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_radius] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_fails] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_GHz] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_Hz] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_MHz] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_above] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_added] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_after] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_against] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_agl] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_allocated] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_am] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ambient] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_amsl] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_apart] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_at] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_averaging] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_below] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_beyond] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_blank] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_bow] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_bullington] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_by] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_carrier] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_cascade] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_city] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_clad] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_confidence] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_corrected] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_cw] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_dB] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_dBW] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_dBd] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_dBi] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_dBm] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_data] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_date] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_datum] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_dc_DASHinput] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_degrees] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_delivered] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_desense] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_displayed] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_dms] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_down] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_eirp] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_elevation] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ends] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_erp] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_etrs89] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_figure] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_fm] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_for] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_forward] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_free_DASHspace] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_frequency] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ft] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_full] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_guess] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_hata_DASHopen] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_hata_DASHsuburban] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_hata_DASHurban] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_height_DASHamsl] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_horizontal] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_if] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_in] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_input] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_instead] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_k] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_kHz] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_kW] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_km] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_latitude] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_longitude] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_m] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_mW] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_maximum] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_mean] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_medium] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_nad27] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_nad83] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_net] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_no] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_nominal] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_occupational] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_of] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_offset] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_on] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_one_DASHedge] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_out] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_output] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_over] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_pep] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_per] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_places] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_public] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_quiet_DASHrural] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_quieting] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_rated] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_reactance] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_reading] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_realized] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_receive_DASHfrequency] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_receive_DASHloss] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_reference] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_reflected] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_rejects] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_residential] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_rural] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_series] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_shared] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_sheet] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_shunt] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_sinad] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_since] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_snr] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_spread] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ssb] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ssb_DASHprocessed] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_then] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_title] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_to] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_total] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_transmit_DASHfrequency] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_two_DASHray] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_typical] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_up] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_vertical] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_way] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_wet] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_wgs84] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_with] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_within] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_yes] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_COMMA] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_EQ] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u00b1] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_PLUS_SLASH_DASH] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_LPAREN] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_RPAREN] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_DASH] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u2212] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u2013] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_PLUS] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_STAR] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_SLASH] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_CARET] = {
    .visible = true,
    .named = false,
  },
  [sym__glued] = {
    .visible = false,
    .named = true,
  },
  [sym_date] = {
    .visible = true,
    .named = true,
  },
  [sym_dms] = {
    .visible = true,
    .named = true,
  },
  [sym_number] = {
    .visible = true,
    .named = true,
  },
  [aux_sym_unit_token1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token2] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token3] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token4] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token5] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token6] = {
    .visible = false,
    .named = false,
  },
  [anon_sym_wavelengths] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_wavelength] = {
    .visible = true,
    .named = false,
  },
  [aux_sym_unit_token7] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token8] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token9] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token10] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token11] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token12] = {
    .visible = false,
    .named = false,
  },
  [anon_sym_ohm_DASHm] = {
    .visible = true,
    .named = false,
  },
  [aux_sym_unit_token13] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token14] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token15] = {
    .visible = false,
    .named = false,
  },
  [anon_sym_degC] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_degF] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ohms] = {
    .visible = true,
    .named = false,
  },
  [aux_sym_unit_token16] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token17] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_unit_token18] = {
    .visible = false,
    .named = false,
  },
  [anon_sym_deg] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_min] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ohm] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_cm] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_kV] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_mi] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_mm] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ms] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_ns] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_uV] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_uW] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_us] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_yd] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u00b0C] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u00b0F] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u00b5V] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u00b5W] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u00b5s] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u03a9m] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u03bcV] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u03bcW] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u03bcs] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u2126m] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_PERCENT] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_A] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_V] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_W] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_h] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_s] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u00b0] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u03a9] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u03bb] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u2126] = {
    .visible = true,
    .named = false,
  },
  [sym_root] = {
    .visible = true,
    .named = true,
  },
  [sym_digit_name] = {
    .visible = true,
    .named = true,
  },
  [sym_string] = {
    .visible = true,
    .named = true,
  },
  [sym_comment] = {
    .visible = true,
    .named = true,
  },
  [sym_source_file] = {
    .visible = true,
    .named = true,
  },
  [sym__line] = {
    .visible = false,
    .named = true,
  },
  [sym__end] = {
    .visible = false,
    .named = true,
  },
  [sym_statement] = {
    .visible = true,
    .named = true,
  },
  [sym_block_statement] = {
    .visible = true,
    .named = true,
  },
  [sym_block] = {
    .visible = true,
    .named = true,
  },
  [sym__head] = {
    .visible = false,
    .named = true,
  },
  [sym_keyword] = {
    .visible = true,
    .named = true,
  },
  [sym_only_word] = {
    .visible = true,
    .named = true,
  },
  [sym_word] = {
    .visible = true,
    .named = true,
  },
  [sym__value] = {
    .visible = false,
    .named = true,
  },
  [sym_range] = {
    .visible = true,
    .named = true,
  },
  [sym_tolerance] = {
    .visible = true,
    .named = true,
  },
  [sym_coverage] = {
    .visible = true,
    .named = true,
  },
  [sym__expression] = {
    .visible = false,
    .named = true,
    .supertype = true,
  },
  [sym_parenthesized_expression] = {
    .visible = true,
    .named = true,
  },
  [sym_negation] = {
    .visible = true,
    .named = true,
  },
  [sym_binary_expression] = {
    .visible = true,
    .named = true,
  },
  [sym_quantity] = {
    .visible = true,
    .named = true,
  },
  [sym_unit] = {
    .visible = true,
    .named = true,
  },
  [aux_sym_source_file_repeat1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym__head_repeat1] = {
    .visible = false,
    .named = false,
  },
};

enum ts_field_identifiers {
  field_half_width = 1,
  field_left = 2,
  field_operator = 3,
  field_right = 4,
};

static const char * const ts_field_names[] = {
  [0] = NULL,
  [field_half_width] = "half_width",
  [field_left] = "left",
  [field_operator] = "operator",
  [field_right] = "right",
};

static const TSFieldMapSlice ts_field_map_slices[PRODUCTION_ID_COUNT] = {
  [1] = {.index = 0, .length = 1},
  [2] = {.index = 1, .length = 3},
};

static const TSFieldMapEntry ts_field_map_entries[] = {
  [0] =
    {field_half_width, 2},
  [1] =
    {field_left, 0},
    {field_operator, 1},
    {field_right, 2},
};

static const TSSymbol ts_alias_sequences[PRODUCTION_ID_COUNT][MAX_ALIAS_SEQUENCE_LENGTH] = {
  [0] = {0},
};

static const uint16_t ts_non_terminal_alias_map[] = {
  0,
};

static const TSStateId ts_primary_state_ids[STATE_COUNT] = {
  [0] = 0,
  [1] = 1,
  [2] = 2,
  [3] = 2,
  [4] = 4,
  [5] = 5,
  [6] = 6,
  [7] = 7,
  [8] = 8,
  [9] = 9,
  [10] = 10,
  [11] = 11,
  [12] = 12,
  [13] = 13,
  [14] = 14,
  [15] = 15,
  [16] = 16,
  [17] = 17,
  [18] = 18,
  [19] = 19,
  [20] = 20,
  [21] = 21,
  [22] = 22,
  [23] = 19,
  [24] = 18,
  [25] = 12,
  [26] = 14,
  [27] = 17,
  [28] = 13,
  [29] = 16,
  [30] = 15,
  [31] = 20,
  [32] = 32,
  [33] = 33,
  [34] = 34,
  [35] = 35,
  [36] = 36,
  [37] = 37,
  [38] = 38,
  [39] = 39,
  [40] = 40,
  [41] = 41,
  [42] = 42,
  [43] = 2,
  [44] = 44,
  [45] = 45,
  [46] = 46,
  [47] = 47,
  [48] = 47,
  [49] = 44,
  [50] = 44,
  [51] = 47,
  [52] = 16,
  [53] = 15,
  [54] = 54,
  [55] = 12,
  [56] = 18,
  [57] = 17,
  [58] = 19,
  [59] = 20,
  [60] = 54,
  [61] = 13,
  [62] = 14,
  [63] = 54,
  [64] = 64,
  [65] = 65,
  [66] = 66,
  [67] = 67,
  [68] = 68,
  [69] = 69,
  [70] = 70,
  [71] = 70,
  [72] = 70,
  [73] = 73,
  [74] = 74,
  [75] = 75,
  [76] = 74,
  [77] = 75,
  [78] = 74,
  [79] = 75,
  [80] = 80,
};

static bool ts_lex(TSLexer *lexer, TSStateId state) {
  START_LEXER();
  eof = lexer->eof(lexer);
  switch (state) {
    case 0:
      if (eof) ADVANCE(157);
      ADVANCE_MAP(
        '\n', 158,
        '\r', 1,
        '"', 3,
        '%', 255,
        '(', 172,
        ')', 173,
        '*', 183,
        '+', 181,
        ',', 168,
        '-', 175,
        '/', 184,
        ';', 159,
        '=', 169,
        'A', 256,
        'V', 257,
        'W', 258,
        '^', 185,
        'd', 297,
        'm', 164,
        'p', 299,
        '{', 160,
        '}', 161,
        0xb0, 259,
        0xb1, 170,
        0xb5, 69,
        0x3a9, 260,
        0x3bb, 261,
        0x3bc, 70,
        0x2013, 179,
        0x2126, 262,
        0x2212, 177,
      );
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(0);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(214);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 1:
      if (lookahead == '\n') ADVANCE(158);
      END_STATE();
    case 2:
      if (lookahead == ' ') ADVANCE(136);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(17);
      END_STATE();
    case 3:
      if (lookahead == '"') ADVANCE(301);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(3);
      END_STATE();
    case 4:
      ADVANCE_MAP(
        '%', 255,
        ')', 173,
        '*', 183,
        '+', 180,
        '-', 174,
        '/', 184,
        'A', 256,
        'V', 257,
        'W', 258,
        '^', 185,
        'd', 297,
        'm', 164,
        'p', 299,
        0xb0, 259,
        0xb5, 69,
        0x3a9, 260,
        0x3bb, 261,
        0x3bc, 70,
        0x2013, 178,
        0x2126, 262,
        0x2212, 176,
      );
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(4);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 5:
      if (lookahead == '(') ADVANCE(172);
      if (lookahead == '+') ADVANCE(133);
      if (lookahead == '-') ADVANCE(175);
      if (lookahead == '/') ADVANCE(19);
      if (lookahead == 0x2013) ADVANCE(179);
      if (lookahead == 0x2212) ADVANCE(177);
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(5);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 6:
      if (lookahead == '(') ADVANCE(150);
      END_STATE();
    case 7:
      if (lookahead == '(') ADVANCE(66);
      END_STATE();
    case 8:
      if (lookahead == '(') ADVANCE(67);
      END_STATE();
    case 9:
      if (lookahead == '(') ADVANCE(68);
      END_STATE();
    case 10:
      ADVANCE_MAP(
        ')', 173,
        '*', 183,
        '+', 180,
        '-', 174,
        '/', 184,
        '^', 185,
        0x2013, 178,
        0x2212, 176,
      );
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(10);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 11:
      if (lookahead == ')') ADVANCE(186);
      END_STATE();
    case 12:
      if (lookahead == ')') ADVANCE(228);
      END_STATE();
    case 13:
      if (lookahead == ')') ADVANCE(227);
      END_STATE();
    case 14:
      if (lookahead == ')') ADVANCE(263);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(14);
      END_STATE();
    case 15:
      if (lookahead == '-') ADVANCE(171);
      END_STATE();
    case 16:
      if (lookahead == '-') ADVANCE(152);
      if (lookahead == '.') ADVANCE(140);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(16);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 17:
      if (lookahead == '.') ADVANCE(141);
      if (lookahead == 0x2032) ADVANCE(210);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(17);
      END_STATE();
    case 18:
      if (lookahead == '.') ADVANCE(143);
      if (lookahead == 0x2033) ADVANCE(209);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(18);
      END_STATE();
    case 19:
      if (lookahead == '/') ADVANCE(302);
      END_STATE();
    case 20:
      if (lookahead == '/') ADVANCE(89);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(20);
      END_STATE();
    case 21:
      if (lookahead == '/') ADVANCE(42);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(21);
      END_STATE();
    case 22:
      if (lookahead == '/') ADVANCE(72);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(22);
      END_STATE();
    case 23:
      if (lookahead == '/') ADVANCE(78);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(23);
      END_STATE();
    case 24:
      if (lookahead == '/') ADVANCE(52);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(24);
      END_STATE();
    case 25:
      if (lookahead == '/') ADVANCE(62);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(25);
      END_STATE();
    case 26:
      if (lookahead == '/') ADVANCE(19);
      if (lookahead == 's') ADVANCE(100);
      if (lookahead == 0x221a) ADVANCE(149);
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(26);
      if (lookahead == '+' ||
          lookahead == '-' ||
          lookahead == 0x2013 ||
          lookahead == 0x2212) ADVANCE(145);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(220);
      END_STATE();
    case 27:
      if (lookahead == '/') ADVANCE(90);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(27);
      END_STATE();
    case 28:
      if (lookahead == '/') ADVANCE(43);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(28);
      END_STATE();
    case 29:
      if (lookahead == '/') ADVANCE(77);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(29);
      END_STATE();
    case 30:
      if (lookahead == '/') ADVANCE(50);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(30);
      END_STATE();
    case 31:
      if (lookahead == '/') ADVANCE(91);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(31);
      END_STATE();
    case 32:
      if (lookahead == '/') ADVANCE(88);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(32);
      END_STATE();
    case 33:
      if (lookahead == '/') ADVANCE(95);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(33);
      END_STATE();
    case 34:
      if (lookahead == '/') ADVANCE(73);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(34);
      END_STATE();
    case 35:
      if (lookahead == '/') ADVANCE(61);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(35);
      END_STATE();
    case 36:
      if (lookahead == '/') ADVANCE(63);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(36);
      END_STATE();
    case 37:
      if (lookahead == '0') ADVANCE(292);
      if (lookahead == '1') ADVANCE(291);
      if (('2' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 38:
      if (lookahead == '0') ADVANCE(39);
      END_STATE();
    case 39:
      if (lookahead == '0') ADVANCE(79);
      END_STATE();
    case 40:
      if (lookahead == '0') ADVANCE(80);
      END_STATE();
    case 41:
      if (lookahead == '0') ADVANCE(40);
      END_STATE();
    case 42:
      if (lookahead == '1') ADVANCE(38);
      if (lookahead == 'f') ADVANCE(109);
      if (lookahead == 'k') ADVANCE(93);
      if (lookahead == 'm') ADVANCE(241);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(42);
      END_STATE();
    case 43:
      if (lookahead == '1') ADVANCE(41);
      if (lookahead == 'f') ADVANCE(108);
      if (lookahead == 'k') ADVANCE(87);
      if (lookahead == 'm') ADVANCE(186);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(43);
      END_STATE();
    case 44:
      if (lookahead == '2') ADVANCE(186);
      END_STATE();
    case 45:
      if (lookahead == '2') ADVANCE(240);
      END_STATE();
    case 46:
      if (lookahead == '2') ADVANCE(236);
      END_STATE();
    case 47:
      if (lookahead == 'B') ADVANCE(190);
      if (lookahead == 'e') ADVANCE(81);
      END_STATE();
    case 48:
      if (lookahead == 'F') ADVANCE(29);
      END_STATE();
    case 49:
      if (lookahead == 'H') ADVANCE(119);
      END_STATE();
    case 50:
      if (lookahead == 'H') ADVANCE(119);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(50);
      END_STATE();
    case 51:
      if (lookahead == 'H') ADVANCE(119);
      if (lookahead == 'V' ||
          lookahead == 'W' ||
          lookahead == 'm') ADVANCE(186);
      END_STATE();
    case 52:
      if (lookahead == 'H') ADVANCE(120);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(52);
      END_STATE();
    case 53:
      if (lookahead == 'H') ADVANCE(121);
      END_STATE();
    case 54:
      if (lookahead == 'H') ADVANCE(122);
      END_STATE();
    case 55:
      if (lookahead == 'H') ADVANCE(123);
      END_STATE();
    case 56:
      if (lookahead == 'H') ADVANCE(124);
      END_STATE();
    case 57:
      if (lookahead == 'H') ADVANCE(125);
      END_STATE();
    case 58:
      if (lookahead == 'H') ADVANCE(126);
      END_STATE();
    case 59:
      if (lookahead == 'H') ADVANCE(127);
      END_STATE();
    case 60:
      if (lookahead == 'M') ADVANCE(49);
      END_STATE();
    case 61:
      if (lookahead == 'M') ADVANCE(49);
      if (lookahead == 's') ADVANCE(102);
      if (lookahead == 0x221a) ADVANCE(60);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(61);
      END_STATE();
    case 62:
      if (lookahead == 'M') ADVANCE(53);
      if (lookahead == 's') ADVANCE(99);
      if (lookahead == 0x221a) ADVANCE(64);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(62);
      END_STATE();
    case 63:
      if (lookahead == 'M') ADVANCE(54);
      if (lookahead == 's') ADVANCE(101);
      if (lookahead == 0x221a) ADVANCE(65);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(63);
      END_STATE();
    case 64:
      if (lookahead == 'M') ADVANCE(55);
      END_STATE();
    case 65:
      if (lookahead == 'M') ADVANCE(56);
      END_STATE();
    case 66:
      if (lookahead == 'M') ADVANCE(57);
      END_STATE();
    case 67:
      if (lookahead == 'M') ADVANCE(58);
      END_STATE();
    case 68:
      if (lookahead == 'M') ADVANCE(59);
      END_STATE();
    case 69:
      if (lookahead == 'V') ADVANCE(247);
      if (lookahead == 'W') ADVANCE(248);
      if (lookahead == 's') ADVANCE(249);
      END_STATE();
    case 70:
      if (lookahead == 'V') ADVANCE(251);
      if (lookahead == 'W') ADVANCE(252);
      if (lookahead == 's') ADVANCE(253);
      END_STATE();
    case 71:
      if (lookahead == 'a') ADVANCE(118);
      END_STATE();
    case 72:
      if (lookahead == 'c') ADVANCE(96);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(72);
      END_STATE();
    case 73:
      if (lookahead == 'c') ADVANCE(94);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(73);
      END_STATE();
    case 74:
      if (lookahead == 'd') ADVANCE(186);
      END_STATE();
    case 75:
      if (lookahead == 'e') ADVANCE(85);
      END_STATE();
    case 76:
      if (lookahead == 'e') ADVANCE(98);
      END_STATE();
    case 77:
      if (lookahead == 'f') ADVANCE(108);
      if (lookahead == 'm') ADVANCE(186);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(77);
      END_STATE();
    case 78:
      if (lookahead == 'f') ADVANCE(110);
      if (lookahead == 'm') ADVANCE(242);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(78);
      END_STATE();
    case 79:
      if (lookahead == 'f') ADVANCE(111);
      if (lookahead == 'm') ADVANCE(234);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(79);
      END_STATE();
    case 80:
      if (lookahead == 'f') ADVANCE(115);
      if (lookahead == 'm') ADVANCE(197);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(80);
      END_STATE();
    case 81:
      if (lookahead == 'g') ADVANCE(205);
      END_STATE();
    case 82:
      if (lookahead == 'g') ADVANCE(113);
      END_STATE();
    case 83:
      if (lookahead == 'h') ADVANCE(203);
      END_STATE();
    case 84:
      if (lookahead == 'h') ADVANCE(92);
      END_STATE();
    case 85:
      if (lookahead == 'l') ADVANCE(76);
      END_STATE();
    case 86:
      if (lookahead == 'm') ADVANCE(206);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 87:
      if (lookahead == 'm') ADVANCE(186);
      END_STATE();
    case 88:
      if (lookahead == 'm') ADVANCE(186);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(88);
      END_STATE();
    case 89:
      if (lookahead == 'm') ADVANCE(243);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(89);
      END_STATE();
    case 90:
      if (lookahead == 'm') ADVANCE(244);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(90);
      END_STATE();
    case 91:
      if (lookahead == 'm') ADVANCE(45);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(91);
      END_STATE();
    case 92:
      if (lookahead == 'm') ADVANCE(187);
      END_STATE();
    case 93:
      if (lookahead == 'm') ADVANCE(238);
      END_STATE();
    case 94:
      if (lookahead == 'm') ADVANCE(44);
      END_STATE();
    case 95:
      if (lookahead == 'm') ADVANCE(44);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(95);
      END_STATE();
    case 96:
      if (lookahead == 'm') ADVANCE(46);
      END_STATE();
    case 97:
      if (lookahead == 'n') ADVANCE(186);
      END_STATE();
    case 98:
      if (lookahead == 'n') ADVANCE(82);
      END_STATE();
    case 99:
      if (lookahead == 'q') ADVANCE(103);
      END_STATE();
    case 100:
      if (lookahead == 'q') ADVANCE(104);
      END_STATE();
    case 101:
      if (lookahead == 'q') ADVANCE(105);
      END_STATE();
    case 102:
      if (lookahead == 'q') ADVANCE(106);
      END_STATE();
    case 103:
      if (lookahead == 'r') ADVANCE(112);
      END_STATE();
    case 104:
      if (lookahead == 'r') ADVANCE(114);
      END_STATE();
    case 105:
      if (lookahead == 'r') ADVANCE(116);
      END_STATE();
    case 106:
      if (lookahead == 'r') ADVANCE(117);
      END_STATE();
    case 107:
      if (lookahead == 's') ADVANCE(186);
      END_STATE();
    case 108:
      if (lookahead == 't') ADVANCE(186);
      END_STATE();
    case 109:
      if (lookahead == 't') ADVANCE(237);
      END_STATE();
    case 110:
      if (lookahead == 't') ADVANCE(239);
      END_STATE();
    case 111:
      if (lookahead == 't') ADVANCE(233);
      END_STATE();
    case 112:
      if (lookahead == 't') ADVANCE(7);
      END_STATE();
    case 113:
      if (lookahead == 't') ADVANCE(83);
      END_STATE();
    case 114:
      if (lookahead == 't') ADVANCE(6);
      END_STATE();
    case 115:
      if (lookahead == 't') ADVANCE(197);
      END_STATE();
    case 116:
      if (lookahead == 't') ADVANCE(8);
      END_STATE();
    case 117:
      if (lookahead == 't') ADVANCE(9);
      END_STATE();
    case 118:
      if (lookahead == 'v') ADVANCE(75);
      END_STATE();
    case 119:
      if (lookahead == 'z') ADVANCE(186);
      END_STATE();
    case 120:
      if (lookahead == 'z') ADVANCE(235);
      END_STATE();
    case 121:
      if (lookahead == 'z') ADVANCE(232);
      END_STATE();
    case 122:
      if (lookahead == 'z') ADVANCE(230);
      END_STATE();
    case 123:
      if (lookahead == 'z') ADVANCE(231);
      END_STATE();
    case 124:
      if (lookahead == 'z') ADVANCE(229);
      END_STATE();
    case 125:
      if (lookahead == 'z') ADVANCE(12);
      END_STATE();
    case 126:
      if (lookahead == 'z') ADVANCE(13);
      END_STATE();
    case 127:
      if (lookahead == 'z') ADVANCE(11);
      END_STATE();
    case 128:
      if (lookahead == 0x2032) ADVANCE(210);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      END_STATE();
    case 129:
      if (lookahead == 0x2033) ADVANCE(209);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(129);
      END_STATE();
    case 130:
      if (lookahead == '+' ||
          lookahead == '-') ADVANCE(139);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(225);
      END_STATE();
    case 131:
      if (lookahead == '+' ||
          lookahead == '-') ADVANCE(148);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(226);
      END_STATE();
    case 132:
      if (lookahead == 'V' ||
          lookahead == 'W' ||
          lookahead == 's') ADVANCE(186);
      END_STATE();
    case 133:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(218);
      END_STATE();
    case 134:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(217);
      END_STATE();
    case 135:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(219);
      END_STATE();
    case 136:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(17);
      END_STATE();
    case 137:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(224);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 138:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(222);
      END_STATE();
    case 139:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(225);
      END_STATE();
    case 140:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(16);
      END_STATE();
    case 141:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      END_STATE();
    case 142:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(18);
      END_STATE();
    case 143:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(129);
      END_STATE();
    case 144:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(293);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 145:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(220);
      END_STATE();
    case 146:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(223);
      END_STATE();
    case 147:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(221);
      END_STATE();
    case 148:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(226);
      END_STATE();
    case 149:
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(264);
      END_STATE();
    case 150:
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(14);
      END_STATE();
    case 151:
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 152:
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 153:
      if (eof) ADVANCE(157);
      ADVANCE_MAP(
        '\n', 158,
        '\r', 1,
        '"', 3,
        '%', 255,
        '(', 172,
        '*', 183,
        '+', 182,
        ',', 168,
        '-', 175,
        '/', 184,
        ';', 159,
        '=', 169,
        'A', 256,
        'V', 257,
        'W', 258,
        '^', 185,
        'd', 297,
        'm', 164,
        'p', 299,
        '{', 160,
        '}', 161,
        0xb0, 259,
        0xb5, 69,
        0x3a9, 260,
        0x3bb, 261,
        0x3bc, 70,
        0x2013, 179,
        0x2126, 262,
        0x2212, 177,
      );
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(153);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(214);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 154:
      if (eof) ADVANCE(157);
      ADVANCE_MAP(
        '\n', 158,
        '\r', 1,
        '"', 3,
        '(', 172,
        '*', 183,
        '+', 181,
        ',', 168,
        '-', 175,
        '/', 184,
        ';', 159,
        '=', 169,
        '^', 185,
        'd', 298,
        'm', 165,
        '{', 160,
        '}', 161,
        0xb1, 170,
        0x2013, 179,
        0x2212, 177,
      );
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(154);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(214);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 155:
      if (eof) ADVANCE(157);
      ADVANCE_MAP(
        '\n', 158,
        '\r', 1,
        '"', 3,
        '(', 172,
        '*', 183,
        '+', 182,
        ',', 168,
        '-', 175,
        '/', 184,
        ';', 159,
        '=', 169,
        '^', 185,
        'd', 298,
        'm', 165,
        '{', 160,
        '}', 161,
        0x2013, 179,
        0x2212, 177,
      );
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(155);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(214);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 156:
      if (eof) ADVANCE(157);
      ADVANCE_MAP(
        '\n', 158,
        '\r', 1,
        '(', 172,
        '+', 133,
        '-', 175,
        '/', 19,
        ';', 159,
        'd', 298,
        'm', 165,
        '}', 161,
        0x2013, 179,
        0x2212, 177,
      );
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(156);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 157:
      ACCEPT_TOKEN(ts_builtin_sym_end);
      END_STATE();
    case 158:
      ACCEPT_TOKEN(aux_sym__end_token1);
      END_STATE();
    case 159:
      ACCEPT_TOKEN(anon_sym_SEMI);
      END_STATE();
    case 160:
      ACCEPT_TOKEN(anon_sym_LBRACE);
      END_STATE();
    case 161:
      ACCEPT_TOKEN(anon_sym_RBRACE);
      END_STATE();
    case 162:
      ACCEPT_TOKEN(anon_sym_dB);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == '/') ADVANCE(42);
      if (lookahead == 'c') ADVANCE(296);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(21);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 163:
      ACCEPT_TOKEN(anon_sym_dB);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 164:
      ACCEPT_TOKEN(anon_sym_m);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == 'W') ADVANCE(166);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 165:
      ACCEPT_TOKEN(anon_sym_m);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == 'W') ADVANCE(167);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 166:
      ACCEPT_TOKEN(anon_sym_mW);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == '/') ADVANCE(72);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(22);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 167:
      ACCEPT_TOKEN(anon_sym_mW);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 168:
      ACCEPT_TOKEN(anon_sym_COMMA);
      END_STATE();
    case 169:
      ACCEPT_TOKEN(anon_sym_EQ);
      END_STATE();
    case 170:
      ACCEPT_TOKEN(anon_sym_u00b1);
      END_STATE();
    case 171:
      ACCEPT_TOKEN(anon_sym_PLUS_SLASH_DASH);
      END_STATE();
    case 172:
      ACCEPT_TOKEN(anon_sym_LPAREN);
      END_STATE();
    case 173:
      ACCEPT_TOKEN(anon_sym_RPAREN);
      END_STATE();
    case 174:
      ACCEPT_TOKEN(anon_sym_DASH);
      END_STATE();
    case 175:
      ACCEPT_TOKEN(anon_sym_DASH);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(218);
      END_STATE();
    case 176:
      ACCEPT_TOKEN(anon_sym_u2212);
      END_STATE();
    case 177:
      ACCEPT_TOKEN(anon_sym_u2212);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(218);
      END_STATE();
    case 178:
      ACCEPT_TOKEN(anon_sym_u2013);
      END_STATE();
    case 179:
      ACCEPT_TOKEN(anon_sym_u2013);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(218);
      END_STATE();
    case 180:
      ACCEPT_TOKEN(anon_sym_PLUS);
      END_STATE();
    case 181:
      ACCEPT_TOKEN(anon_sym_PLUS);
      if (lookahead == '/') ADVANCE(15);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(218);
      END_STATE();
    case 182:
      ACCEPT_TOKEN(anon_sym_PLUS);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(218);
      END_STATE();
    case 183:
      ACCEPT_TOKEN(anon_sym_STAR);
      END_STATE();
    case 184:
      ACCEPT_TOKEN(anon_sym_SLASH);
      if (lookahead == '/') ADVANCE(302);
      END_STATE();
    case 185:
      ACCEPT_TOKEN(anon_sym_CARET);
      END_STATE();
    case 186:
      ACCEPT_TOKEN(sym__glued);
      END_STATE();
    case 187:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '-') ADVANCE(87);
      if (lookahead == 's') ADVANCE(186);
      END_STATE();
    case 188:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '-') ADVANCE(86);
      if (lookahead == '.') ADVANCE(152);
      if (lookahead == 's') ADVANCE(206);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 189:
      ACCEPT_TOKEN(sym__glued);
      ADVANCE_MAP(
        '/', 43,
        'c', 267,
        '\t', 28,
        ' ', 28,
        '-', 152,
        '.', 152,
        'W', 206,
        'd', 206,
        'i', 206,
        'm', 206,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 190:
      ACCEPT_TOKEN(sym__glued);
      ADVANCE_MAP(
        '/', 43,
        'c', 30,
        '\t', 28,
        ' ', 28,
        'W', 186,
        'd', 186,
        'i', 186,
        'm', 186,
      );
      END_STATE();
    case 191:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '/') ADVANCE(88);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(32);
      END_STATE();
    case 192:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '/') ADVANCE(88);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(32);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 193:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '/') ADVANCE(95);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(33);
      END_STATE();
    case 194:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '/') ADVANCE(95);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(33);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 195:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '/') ADVANCE(73);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(34);
      END_STATE();
    case 196:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '/') ADVANCE(73);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(34);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 197:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '/') ADVANCE(61);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(35);
      END_STATE();
    case 198:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == 'W') ADVANCE(196);
      if (lookahead == 'i') ADVANCE(200);
      if (lookahead == 'm' ||
          lookahead == 's') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 199:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == 'W') ADVANCE(195);
      if (lookahead == 'i') ADVANCE(201);
      if (lookahead == 'm' ||
          lookahead == 's') ADVANCE(186);
      END_STATE();
    case 200:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == 'n') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 201:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == 'n') ADVANCE(186);
      END_STATE();
    case 202:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == 's') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 203:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == 's') ADVANCE(186);
      END_STATE();
    case 204:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 205:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(186);
      END_STATE();
    case 206:
      ACCEPT_TOKEN(sym__glued);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 207:
      ACCEPT_TOKEN(sym_date);
      if (lookahead == '-') ADVANCE(144);
      if (lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 208:
      ACCEPT_TOKEN(sym_date);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 209:
      ACCEPT_TOKEN(sym_dms);
      END_STATE();
    case 210:
      ACCEPT_TOKEN(sym_dms);
      if (lookahead == ' ') ADVANCE(142);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(18);
      END_STATE();
    case 211:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        '-', 37,
        '.', 134,
        ':', 135,
        'A', 192,
        'G', 271,
        'H', 289,
        'M', 271,
        'V', 192,
        'W', 194,
        'c', 281,
        'd', 268,
        'f', 286,
        'i', 283,
        'k', 270,
        'm', 198,
        'n', 285,
        'o', 279,
        'p', 269,
        'u', 290,
        'w', 272,
        'y', 273,
        0xb0, 2,
        'E', 265,
        'e', 265,
        'h', 206,
        's', 206,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(215);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 212:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        '-', 152,
        '.', 134,
        ':', 135,
        'A', 192,
        'G', 271,
        'H', 289,
        'M', 271,
        'V', 192,
        'W', 194,
        'c', 281,
        'd', 268,
        'f', 286,
        'i', 283,
        'k', 270,
        'm', 198,
        'n', 285,
        'o', 279,
        'p', 269,
        'u', 290,
        'w', 272,
        'y', 273,
        0xb0, 2,
        'E', 265,
        'e', 265,
        'h', 206,
        's', 206,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(211);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 213:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        '-', 152,
        '.', 134,
        ':', 135,
        'A', 192,
        'G', 271,
        'H', 289,
        'M', 271,
        'V', 192,
        'W', 194,
        'c', 281,
        'd', 268,
        'f', 286,
        'i', 283,
        'k', 270,
        'm', 198,
        'n', 285,
        'o', 279,
        'p', 269,
        'u', 290,
        'w', 272,
        'y', 273,
        0xb0, 2,
        'E', 265,
        'e', 265,
        'h', 206,
        's', 206,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(212);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 214:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        '-', 152,
        '.', 134,
        ':', 135,
        'A', 192,
        'G', 271,
        'H', 289,
        'M', 271,
        'V', 192,
        'W', 194,
        'c', 281,
        'd', 268,
        'f', 286,
        'i', 283,
        'k', 270,
        'm', 198,
        'n', 285,
        'o', 279,
        'p', 269,
        'u', 290,
        'w', 272,
        'y', 273,
        0xb0, 2,
        'E', 265,
        'e', 265,
        'h', 206,
        's', 206,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(213);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 215:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        '-', 152,
        '.', 134,
        ':', 135,
        'A', 192,
        'G', 271,
        'H', 289,
        'M', 271,
        'V', 192,
        'W', 194,
        'c', 281,
        'd', 268,
        'f', 286,
        'i', 283,
        'k', 270,
        'm', 198,
        'n', 285,
        'o', 279,
        'p', 269,
        'u', 290,
        'w', 272,
        'y', 273,
        0xb0, 2,
        'E', 265,
        'e', 265,
        'h', 206,
        's', 206,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(215);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 216:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        '-', 152,
        '.', 134,
        ':', 135,
        'A', 192,
        'G', 271,
        'H', 289,
        'M', 271,
        'V', 192,
        'W', 194,
        'c', 281,
        'd', 268,
        'f', 286,
        'i', 283,
        'k', 270,
        'm', 198,
        'n', 285,
        'o', 279,
        'p', 269,
        'u', 290,
        'w', 272,
        'y', 273,
        'E', 265,
        'e', 265,
        'h', 206,
        's', 206,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(216);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 217:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        '-', 152,
        '.', 140,
        ':', 135,
        'A', 192,
        'G', 271,
        'H', 289,
        'M', 271,
        'V', 192,
        'W', 194,
        'c', 281,
        'd', 268,
        'f', 286,
        'i', 283,
        'k', 270,
        'm', 198,
        'n', 285,
        'o', 279,
        'p', 269,
        'u', 290,
        'w', 272,
        'y', 273,
        'E', 265,
        'e', 265,
        'h', 206,
        's', 206,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(217);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 218:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        '.', 138,
        ':', 135,
        'A', 191,
        'G', 49,
        'H', 119,
        'M', 49,
        'V', 191,
        'W', 193,
        'c', 87,
        'd', 47,
        'f', 108,
        'i', 97,
        'k', 51,
        'm', 199,
        'n', 107,
        'o', 84,
        'p', 48,
        'u', 132,
        'w', 71,
        'y', 74,
        'E', 130,
        'e', 130,
        'h', 186,
        's', 186,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(218);
      END_STATE();
    case 219:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        '.', 139,
        'A', 191,
        'G', 49,
        'H', 119,
        'M', 49,
        'V', 191,
        'W', 193,
        'c', 87,
        'd', 47,
        'f', 108,
        'i', 97,
        'k', 51,
        'm', 199,
        'n', 107,
        'o', 84,
        'p', 48,
        'u', 132,
        'w', 71,
        'y', 74,
        'h', 186,
        's', 186,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(219);
      END_STATE();
    case 220:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(146);
      if (lookahead == ':') ADVANCE(147);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(131);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(220);
      END_STATE();
    case 221:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(148);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(221);
      END_STATE();
    case 222:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        ':', 135,
        'A', 191,
        'G', 49,
        'H', 119,
        'M', 49,
        'V', 191,
        'W', 193,
        'c', 87,
        'd', 47,
        'f', 108,
        'i', 97,
        'k', 51,
        'm', 199,
        'n', 107,
        'o', 84,
        'p', 48,
        'u', 132,
        'w', 71,
        'y', 74,
        'E', 130,
        'e', 130,
        'h', 186,
        's', 186,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(222);
      END_STATE();
    case 223:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == ':') ADVANCE(147);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(131);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(223);
      END_STATE();
    case 224:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        'A', 192,
        'G', 271,
        'H', 289,
        'M', 271,
        'V', 192,
        'W', 194,
        'c', 281,
        'd', 268,
        'f', 286,
        'i', 283,
        'k', 270,
        'm', 198,
        'n', 285,
        'o', 279,
        'p', 269,
        'u', 290,
        'w', 272,
        'y', 273,
        'h', 206,
        's', 206,
        '-', 152,
        '.', 152,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(224);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 225:
      ACCEPT_TOKEN(sym_number);
      ADVANCE_MAP(
        'A', 191,
        'G', 49,
        'H', 119,
        'M', 49,
        'V', 191,
        'W', 193,
        'c', 87,
        'd', 47,
        'f', 108,
        'i', 97,
        'k', 51,
        'm', 199,
        'n', 107,
        'o', 84,
        'p', 48,
        'u', 132,
        'w', 71,
        'y', 74,
        'h', 186,
        's', 186,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(225);
      END_STATE();
    case 226:
      ACCEPT_TOKEN(sym_number);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(226);
      END_STATE();
    case 227:
      ACCEPT_TOKEN(aux_sym_unit_token1);
      END_STATE();
    case 228:
      ACCEPT_TOKEN(aux_sym_unit_token2);
      END_STATE();
    case 229:
      ACCEPT_TOKEN(aux_sym_unit_token3);
      END_STATE();
    case 230:
      ACCEPT_TOKEN(aux_sym_unit_token4);
      END_STATE();
    case 231:
      ACCEPT_TOKEN(aux_sym_unit_token5);
      END_STATE();
    case 232:
      ACCEPT_TOKEN(aux_sym_unit_token6);
      END_STATE();
    case 233:
      ACCEPT_TOKEN(aux_sym_unit_token7);
      if (lookahead == '/') ADVANCE(63);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(36);
      END_STATE();
    case 234:
      ACCEPT_TOKEN(aux_sym_unit_token8);
      if (lookahead == '/') ADVANCE(62);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(25);
      END_STATE();
    case 235:
      ACCEPT_TOKEN(aux_sym_unit_token9);
      END_STATE();
    case 236:
      ACCEPT_TOKEN(aux_sym_unit_token10);
      END_STATE();
    case 237:
      ACCEPT_TOKEN(aux_sym_unit_token11);
      END_STATE();
    case 238:
      ACCEPT_TOKEN(aux_sym_unit_token12);
      END_STATE();
    case 239:
      ACCEPT_TOKEN(aux_sym_unit_token13);
      END_STATE();
    case 240:
      ACCEPT_TOKEN(aux_sym_unit_token14);
      END_STATE();
    case 241:
      ACCEPT_TOKEN(aux_sym_unit_token15);
      END_STATE();
    case 242:
      ACCEPT_TOKEN(aux_sym_unit_token16);
      END_STATE();
    case 243:
      ACCEPT_TOKEN(aux_sym_unit_token17);
      END_STATE();
    case 244:
      ACCEPT_TOKEN(aux_sym_unit_token18);
      END_STATE();
    case 245:
      ACCEPT_TOKEN(anon_sym_u00b0C);
      END_STATE();
    case 246:
      ACCEPT_TOKEN(anon_sym_u00b0F);
      END_STATE();
    case 247:
      ACCEPT_TOKEN(anon_sym_u00b5V);
      END_STATE();
    case 248:
      ACCEPT_TOKEN(anon_sym_u00b5W);
      END_STATE();
    case 249:
      ACCEPT_TOKEN(anon_sym_u00b5s);
      END_STATE();
    case 250:
      ACCEPT_TOKEN(anon_sym_u03a9m);
      END_STATE();
    case 251:
      ACCEPT_TOKEN(anon_sym_u03bcV);
      END_STATE();
    case 252:
      ACCEPT_TOKEN(anon_sym_u03bcW);
      END_STATE();
    case 253:
      ACCEPT_TOKEN(anon_sym_u03bcs);
      END_STATE();
    case 254:
      ACCEPT_TOKEN(anon_sym_u2126m);
      END_STATE();
    case 255:
      ACCEPT_TOKEN(anon_sym_PERCENT);
      END_STATE();
    case 256:
      ACCEPT_TOKEN(anon_sym_A);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == '/') ADVANCE(89);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(20);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 257:
      ACCEPT_TOKEN(anon_sym_V);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == '/') ADVANCE(90);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(27);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 258:
      ACCEPT_TOKEN(anon_sym_W);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == '/') ADVANCE(91);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(31);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 259:
      ACCEPT_TOKEN(anon_sym_u00b0);
      if (lookahead == 'C') ADVANCE(245);
      if (lookahead == 'F') ADVANCE(246);
      END_STATE();
    case 260:
      ACCEPT_TOKEN(anon_sym_u03a9);
      if (lookahead == 'm') ADVANCE(250);
      END_STATE();
    case 261:
      ACCEPT_TOKEN(anon_sym_u03bb);
      END_STATE();
    case 262:
      ACCEPT_TOKEN(anon_sym_u2126);
      if (lookahead == 'm') ADVANCE(254);
      END_STATE();
    case 263:
      ACCEPT_TOKEN(sym_root);
      END_STATE();
    case 264:
      ACCEPT_TOKEN(sym_root);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(264);
      END_STATE();
    case 265:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == '+') ADVANCE(139);
      if (lookahead == '-') ADVANCE(137);
      if (lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(224);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 266:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == '/') ADVANCE(77);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(29);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 267:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == '/') ADVANCE(50);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(30);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 268:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'B') ADVANCE(189);
      if (lookahead == 'e') ADVANCE(276);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 269:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'F') ADVANCE(266);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 270:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'H') ADVANCE(289);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (lookahead == 'V' ||
          lookahead == 'W' ||
          lookahead == 'm') ADVANCE(206);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 271:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'H') ADVANCE(289);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 272:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'a') ADVANCE(288);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 273:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'd') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 274:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'e') ADVANCE(280);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 275:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'e') ADVANCE(284);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 276:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'g') ADVANCE(204);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 277:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'g') ADVANCE(287);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 278:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'h') ADVANCE(202);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 279:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'h') ADVANCE(282);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 280:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'l') ADVANCE(275);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 281:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'm') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 282:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'm') ADVANCE(188);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 283:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'n') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 284:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'n') ADVANCE(277);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 285:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 's') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 286:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 't') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 287:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 't') ADVANCE(278);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 288:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'v') ADVANCE(274);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 289:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == 'z') ADVANCE(206);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'y')) ADVANCE(294);
      END_STATE();
    case 290:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (lookahead == 'V' ||
          lookahead == 'W' ||
          lookahead == 's') ADVANCE(206);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 291:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '2')) ADVANCE(207);
      if (('3' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 292:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('1' <= lookahead && lookahead <= '9')) ADVANCE(207);
      if (lookahead == '0' ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 293:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(208);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 294:
      ACCEPT_TOKEN(sym_digit_name);
      if (lookahead == '-' ||
          lookahead == '.') ADVANCE(152);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(294);
      END_STATE();
    case 295:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == '/') ADVANCE(78);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(23);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 296:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == '/') ADVANCE(52);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(24);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 297:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == 'B') ADVANCE(162);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 298:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == 'B') ADVANCE(163);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 299:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (lookahead == 'F') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 300:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(151);
      if (lookahead == '.') ADVANCE(151);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(300);
      END_STATE();
    case 301:
      ACCEPT_TOKEN(sym_string);
      END_STATE();
    case 302:
      ACCEPT_TOKEN(sym_comment);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(302);
      END_STATE();
    default:
      return false;
  }
}

static bool ts_lex_keywords(TSLexer *lexer, TSStateId state) {
  START_LEXER();
  eof = lexer->eof(lexer);
  switch (state) {
    case 0:
      ADVANCE_MAP(
        'G', 1,
        'H', 2,
        'M', 3,
        'a', 4,
        'b', 5,
        'c', 6,
        'd', 7,
        'e', 8,
        'f', 9,
        'g', 10,
        'h', 11,
        'i', 12,
        'j', 13,
        'k', 14,
        'l', 15,
        'm', 16,
        'n', 17,
        'o', 18,
        'p', 19,
        'q', 20,
        'r', 21,
        's', 22,
        't', 23,
        'u', 24,
        'v', 25,
        'w', 26,
        'y', 27,
      );
      if (lookahead == '\t' ||
          lookahead == ' ') SKIP(0);
      END_STATE();
    case 1:
      if (lookahead == 'H') ADVANCE(28);
      END_STATE();
    case 2:
      if (lookahead == 'z') ADVANCE(29);
      END_STATE();
    case 3:
      if (lookahead == 'H') ADVANCE(30);
      END_STATE();
    case 4:
      ADVANCE_MAP(
        'b', 31,
        'c', 32,
        'd', 33,
        'f', 34,
        'g', 35,
        'l', 36,
        'm', 37,
        'n', 38,
        'p', 39,
        's', 40,
        't', 41,
        'u', 42,
        'v', 43,
      );
      END_STATE();
    case 5:
      if (lookahead == 'a') ADVANCE(44);
      if (lookahead == 'e') ADVANCE(45);
      if (lookahead == 'l') ADVANCE(46);
      if (lookahead == 'o') ADVANCE(47);
      if (lookahead == 'r') ADVANCE(48);
      if (lookahead == 'u') ADVANCE(49);
      if (lookahead == 'y') ADVANCE(50);
      END_STATE();
    case 6:
      ADVANCE_MAP(
        'a', 51,
        'e', 52,
        'h', 53,
        'i', 54,
        'l', 55,
        'm', 56,
        'o', 57,
        'w', 58,
      );
      END_STATE();
    case 7:
      ADVANCE_MAP(
        'B', 59,
        'a', 60,
        'c', 61,
        'e', 62,
        'i', 63,
        'm', 64,
        'o', 65,
        'r', 66,
        'u', 67,
      );
      END_STATE();
    case 8:
      ADVANCE_MAP(
        'd', 68,
        'f', 69,
        'i', 70,
        'l', 71,
        'n', 72,
        'q', 73,
        'r', 74,
        't', 75,
        'x', 76,
      );
      END_STATE();
    case 9:
      if (lookahead == 'a') ADVANCE(77);
      if (lookahead == 'i') ADVANCE(78);
      if (lookahead == 'm') ADVANCE(79);
      if (lookahead == 'o') ADVANCE(80);
      if (lookahead == 'r') ADVANCE(81);
      if (lookahead == 't') ADVANCE(82);
      if (lookahead == 'u') ADVANCE(83);
      END_STATE();
    case 10:
      if (lookahead == 'a') ADVANCE(84);
      if (lookahead == 'e') ADVANCE(85);
      if (lookahead == 'r') ADVANCE(86);
      if (lookahead == 'u') ADVANCE(87);
      END_STATE();
    case 11:
      ACCEPT_TOKEN(anon_sym_h);
      if (lookahead == 'a') ADVANCE(88);
      if (lookahead == 'e') ADVANCE(89);
      if (lookahead == 'i') ADVANCE(90);
      if (lookahead == 'o') ADVANCE(91);
      END_STATE();
    case 12:
      if (lookahead == 'f') ADVANCE(92);
      if (lookahead == 'm') ADVANCE(93);
      if (lookahead == 'n') ADVANCE(94);
      if (lookahead == 's') ADVANCE(95);
      END_STATE();
    case 13:
      if (lookahead == 'o') ADVANCE(96);
      if (lookahead == 'u') ADVANCE(97);
      END_STATE();
    case 14:
      ACCEPT_TOKEN(anon_sym_k);
      if (lookahead == '-') ADVANCE(98);
      if (lookahead == 'H') ADVANCE(99);
      if (lookahead == 'V') ADVANCE(100);
      if (lookahead == 'W') ADVANCE(101);
      if (lookahead == 'e') ADVANCE(102);
      if (lookahead == 'i') ADVANCE(103);
      if (lookahead == 'm') ADVANCE(104);
      END_STATE();
    case 15:
      if (lookahead == 'a') ADVANCE(105);
      if (lookahead == 'e') ADVANCE(106);
      if (lookahead == 'i') ADVANCE(107);
      if (lookahead == 'o') ADVANCE(108);
      END_STATE();
    case 16:
      if (lookahead == 'a') ADVANCE(109);
      if (lookahead == 'e') ADVANCE(110);
      if (lookahead == 'i') ADVANCE(111);
      if (lookahead == 'm') ADVANCE(112);
      if (lookahead == 'o') ADVANCE(113);
      if (lookahead == 's') ADVANCE(114);
      END_STATE();
    case 17:
      if (lookahead == 'a') ADVANCE(115);
      if (lookahead == 'e') ADVANCE(116);
      if (lookahead == 'o') ADVANCE(117);
      if (lookahead == 's') ADVANCE(118);
      END_STATE();
    case 18:
      if (lookahead == 'c') ADVANCE(119);
      if (lookahead == 'f') ADVANCE(120);
      if (lookahead == 'h') ADVANCE(121);
      if (lookahead == 'n') ADVANCE(122);
      if (lookahead == 'p') ADVANCE(123);
      if (lookahead == 'u') ADVANCE(124);
      if (lookahead == 'v') ADVANCE(125);
      END_STATE();
    case 19:
      ADVANCE_MAP(
        'a', 126,
        'e', 127,
        'h', 128,
        'i', 129,
        'l', 130,
        'o', 131,
        'r', 132,
        'u', 133,
      );
      END_STATE();
    case 20:
      if (lookahead == 'u') ADVANCE(134);
      END_STATE();
    case 21:
      if (lookahead == 'a') ADVANCE(135);
      if (lookahead == 'e') ADVANCE(136);
      if (lookahead == 'u') ADVANCE(137);
      END_STATE();
    case 22:
      ACCEPT_TOKEN(anon_sym_s);
      ADVANCE_MAP(
        'c', 138,
        'e', 139,
        'h', 140,
        'i', 141,
        'n', 142,
        'o', 143,
        'p', 144,
        's', 145,
        't', 146,
        'w', 147,
      );
      END_STATE();
    case 23:
      ADVANCE_MAP(
        'a', 148,
        'e', 149,
        'h', 150,
        'i', 151,
        'o', 152,
        'r', 153,
        'u', 154,
        'w', 155,
        'y', 156,
      );
      END_STATE();
    case 24:
      if (lookahead == 'V') ADVANCE(157);
      if (lookahead == 'W') ADVANCE(158);
      if (lookahead == 'n') ADVANCE(159);
      if (lookahead == 'p') ADVANCE(160);
      if (lookahead == 's') ADVANCE(161);
      END_STATE();
    case 25:
      if (lookahead == 'a') ADVANCE(162);
      if (lookahead == 'e') ADVANCE(163);
      if (lookahead == 'o') ADVANCE(164);
      END_STATE();
    case 26:
      if (lookahead == 'a') ADVANCE(165);
      if (lookahead == 'e') ADVANCE(166);
      if (lookahead == 'g') ADVANCE(167);
      if (lookahead == 'i') ADVANCE(168);
      END_STATE();
    case 27:
      if (lookahead == 'd') ADVANCE(169);
      if (lookahead == 'e') ADVANCE(170);
      END_STATE();
    case 28:
      if (lookahead == 'z') ADVANCE(171);
      END_STATE();
    case 29:
      ACCEPT_TOKEN(anon_sym_Hz);
      END_STATE();
    case 30:
      if (lookahead == 'z') ADVANCE(172);
      END_STATE();
    case 31:
      if (lookahead == 'o') ADVANCE(173);
      END_STATE();
    case 32:
      if (lookahead == 'c') ADVANCE(174);
      END_STATE();
    case 33:
      if (lookahead == 'a') ADVANCE(175);
      if (lookahead == 'd') ADVANCE(176);
      END_STATE();
    case 34:
      if (lookahead == 't') ADVANCE(177);
      END_STATE();
    case 35:
      if (lookahead == 'a') ADVANCE(178);
      if (lookahead == 'l') ADVANCE(179);
      END_STATE();
    case 36:
      if (lookahead == 'l') ADVANCE(180);
      if (lookahead == 'o') ADVANCE(181);
      END_STATE();
    case 37:
      ACCEPT_TOKEN(anon_sym_am);
      if (lookahead == 'b') ADVANCE(182);
      if (lookahead == 'p') ADVANCE(183);
      if (lookahead == 's') ADVANCE(184);
      END_STATE();
    case 38:
      if (lookahead == 't') ADVANCE(185);
      END_STATE();
    case 39:
      if (lookahead == 'a') ADVANCE(186);
      END_STATE();
    case 40:
      if (lookahead == 'k') ADVANCE(187);
      END_STATE();
    case 41:
      ACCEPT_TOKEN(anon_sym_at);
      END_STATE();
    case 42:
      if (lookahead == 't') ADVANCE(188);
      END_STATE();
    case 43:
      if (lookahead == 'e') ADVANCE(189);
      END_STATE();
    case 44:
      if (lookahead == 'l') ADVANCE(190);
      if (lookahead == 'n') ADVANCE(191);
      if (lookahead == 's') ADVANCE(192);
      END_STATE();
    case 45:
      if (lookahead == 'l') ADVANCE(193);
      if (lookahead == 's') ADVANCE(194);
      if (lookahead == 'y') ADVANCE(195);
      END_STATE();
    case 46:
      if (lookahead == 'a') ADVANCE(196);
      if (lookahead == 'o') ADVANCE(197);
      END_STATE();
    case 47:
      if (lookahead == 'w') ADVANCE(198);
      END_STATE();
    case 48:
      if (lookahead == 'a') ADVANCE(199);
      END_STATE();
    case 49:
      if (lookahead == 'l') ADVANCE(200);
      if (lookahead == 'm') ADVANCE(201);
      END_STATE();
    case 50:
      ACCEPT_TOKEN(anon_sym_by);
      END_STATE();
    case 51:
      if (lookahead == 'b') ADVANCE(202);
      if (lookahead == 'l') ADVANCE(203);
      if (lookahead == 'r') ADVANCE(204);
      if (lookahead == 's') ADVANCE(205);
      END_STATE();
    case 52:
      if (lookahead == 'r') ADVANCE(206);
      END_STATE();
    case 53:
      if (lookahead == 'a') ADVANCE(207);
      END_STATE();
    case 54:
      if (lookahead == 'r') ADVANCE(208);
      if (lookahead == 't') ADVANCE(209);
      END_STATE();
    case 55:
      if (lookahead == 'a') ADVANCE(210);
      END_STATE();
    case 56:
      ACCEPT_TOKEN(anon_sym_cm);
      END_STATE();
    case 57:
      if (lookahead == 'm') ADVANCE(211);
      if (lookahead == 'n') ADVANCE(212);
      if (lookahead == 'r') ADVANCE(213);
      if (lookahead == 'u') ADVANCE(214);
      if (lookahead == 'v') ADVANCE(215);
      END_STATE();
    case 58:
      ACCEPT_TOKEN(anon_sym_cw);
      END_STATE();
    case 59:
      if (lookahead == 'W') ADVANCE(216);
      if (lookahead == 'd') ADVANCE(217);
      if (lookahead == 'i') ADVANCE(218);
      if (lookahead == 'm') ADVANCE(219);
      END_STATE();
    case 60:
      if (lookahead == 't') ADVANCE(220);
      END_STATE();
    case 61:
      if (lookahead == '-') ADVANCE(221);
      END_STATE();
    case 62:
      if (lookahead == 'g') ADVANCE(222);
      if (lookahead == 'l') ADVANCE(223);
      if (lookahead == 's') ADVANCE(224);
      if (lookahead == 'v') ADVANCE(225);
      END_STATE();
    case 63:
      if (lookahead == 'a') ADVANCE(226);
      if (lookahead == 'p') ADVANCE(227);
      if (lookahead == 'r') ADVANCE(228);
      if (lookahead == 's') ADVANCE(229);
      if (lookahead == 'v') ADVANCE(230);
      END_STATE();
    case 64:
      if (lookahead == 's') ADVANCE(231);
      END_STATE();
    case 65:
      if (lookahead == 'w') ADVANCE(232);
      END_STATE();
    case 66:
      if (lookahead == 'i') ADVANCE(233);
      END_STATE();
    case 67:
      if (lookahead == 'e') ADVANCE(234);
      if (lookahead == 'p') ADVANCE(235);
      if (lookahead == 't') ADVANCE(236);
      END_STATE();
    case 68:
      if (lookahead == 'i') ADVANCE(237);
      END_STATE();
    case 69:
      if (lookahead == 'f') ADVANCE(238);
      END_STATE();
    case 70:
      if (lookahead == 'r') ADVANCE(239);
      END_STATE();
    case 71:
      if (lookahead == 'e') ADVANCE(240);
      END_STATE();
    case 72:
      if (lookahead == 'd') ADVANCE(241);
      END_STATE();
    case 73:
      if (lookahead == 'u') ADVANCE(242);
      END_STATE();
    case 74:
      if (lookahead == 'p') ADVANCE(243);
      END_STATE();
    case 75:
      if (lookahead == 'r') ADVANCE(244);
      END_STATE();
    case 76:
      if (lookahead == 'c') ADVANCE(245);
      if (lookahead == 'p') ADVANCE(246);
      END_STATE();
    case 77:
      if (lookahead == 'i') ADVANCE(247);
      if (lookahead == 'm') ADVANCE(248);
      END_STATE();
    case 78:
      if (lookahead == 'e') ADVANCE(249);
      if (lookahead == 'g') ADVANCE(250);
      if (lookahead == 'l') ADVANCE(251);
      if (lookahead == 'x') ADVANCE(252);
      END_STATE();
    case 79:
      ACCEPT_TOKEN(anon_sym_fm);
      END_STATE();
    case 80:
      if (lookahead == 'l') ADVANCE(253);
      if (lookahead == 'r') ADVANCE(254);
      END_STATE();
    case 81:
      if (lookahead == 'e') ADVANCE(255);
      if (lookahead == 'o') ADVANCE(256);
      END_STATE();
    case 82:
      ACCEPT_TOKEN(anon_sym_ft);
      END_STATE();
    case 83:
      if (lookahead == 'l') ADVANCE(257);
      END_STATE();
    case 84:
      if (lookahead == 'i') ADVANCE(258);
      END_STATE();
    case 85:
      if (lookahead == 'n') ADVANCE(259);
      END_STATE();
    case 86:
      if (lookahead == 'o') ADVANCE(260);
      END_STATE();
    case 87:
      if (lookahead == 'e') ADVANCE(261);
      END_STATE();
    case 88:
      if (lookahead == 'a') ADVANCE(262);
      if (lookahead == 't') ADVANCE(263);
      END_STATE();
    case 89:
      if (lookahead == 'i') ADVANCE(264);
      END_STATE();
    case 90:
      if (lookahead == 'g') ADVANCE(265);
      END_STATE();
    case 91:
      if (lookahead == 'l') ADVANCE(266);
      if (lookahead == 'p') ADVANCE(267);
      if (lookahead == 'r') ADVANCE(268);
      END_STATE();
    case 92:
      ACCEPT_TOKEN(anon_sym_if);
      END_STATE();
    case 93:
      if (lookahead == 'p') ADVANCE(269);
      END_STATE();
    case 94:
      ACCEPT_TOKEN(anon_sym_in);
      if (lookahead == 'n') ADVANCE(270);
      if (lookahead == 'p') ADVANCE(271);
      if (lookahead == 's') ADVANCE(272);
      END_STATE();
    case 95:
      if (lookahead == 'o') ADVANCE(273);
      END_STATE();
    case 96:
      if (lookahead == 'i') ADVANCE(274);
      END_STATE();
    case 97:
      if (lookahead == 'm') ADVANCE(275);
      if (lookahead == 'r') ADVANCE(276);
      END_STATE();
    case 98:
      if (lookahead == 'f') ADVANCE(277);
      END_STATE();
    case 99:
      if (lookahead == 'z') ADVANCE(278);
      END_STATE();
    case 100:
      ACCEPT_TOKEN(anon_sym_kV);
      END_STATE();
    case 101:
      ACCEPT_TOKEN(anon_sym_kW);
      END_STATE();
    case 102:
      if (lookahead == 'y') ADVANCE(279);
      END_STATE();
    case 103:
      if (lookahead == 'n') ADVANCE(280);
      END_STATE();
    case 104:
      ACCEPT_TOKEN(anon_sym_km);
      END_STATE();
    case 105:
      if (lookahead == 't') ADVANCE(281);
      END_STATE();
    case 106:
      if (lookahead == 't') ADVANCE(282);
      END_STATE();
    case 107:
      if (lookahead == 'c') ADVANCE(283);
      if (lookahead == 'm') ADVANCE(284);
      if (lookahead == 'n') ADVANCE(285);
      END_STATE();
    case 108:
      if (lookahead == 'a') ADVANCE(286);
      if (lookahead == 'n') ADVANCE(287);
      if (lookahead == 's') ADVANCE(288);
      if (lookahead == 'w') ADVANCE(289);
      END_STATE();
    case 109:
      if (lookahead == 'x') ADVANCE(290);
      END_STATE();
    case 110:
      if (lookahead == 'a') ADVANCE(291);
      if (lookahead == 'd') ADVANCE(292);
      if (lookahead == 't') ADVANCE(293);
      END_STATE();
    case 111:
      ACCEPT_TOKEN(anon_sym_mi);
      if (lookahead == 'n') ADVANCE(294);
      END_STATE();
    case 112:
      ACCEPT_TOKEN(anon_sym_mm);
      END_STATE();
    case 113:
      if (lookahead == 'd') ADVANCE(295);
      END_STATE();
    case 114:
      ACCEPT_TOKEN(anon_sym_ms);
      END_STATE();
    case 115:
      if (lookahead == 'd') ADVANCE(296);
      END_STATE();
    case 116:
      if (lookahead == 'e') ADVANCE(297);
      if (lookahead == 't') ADVANCE(298);
      END_STATE();
    case 117:
      ACCEPT_TOKEN(anon_sym_no);
      if (lookahead == 'i') ADVANCE(299);
      if (lookahead == 'm') ADVANCE(300);
      END_STATE();
    case 118:
      ACCEPT_TOKEN(anon_sym_ns);
      END_STATE();
    case 119:
      if (lookahead == 'c') ADVANCE(301);
      END_STATE();
    case 120:
      ACCEPT_TOKEN(anon_sym_of);
      if (lookahead == 'f') ADVANCE(302);
      END_STATE();
    case 121:
      if (lookahead == 'm') ADVANCE(303);
      END_STATE();
    case 122:
      ACCEPT_TOKEN(anon_sym_on);
      if (lookahead == 'e') ADVANCE(304);
      END_STATE();
    case 123:
      if (lookahead == 'e') ADVANCE(305);
      END_STATE();
    case 124:
      if (lookahead == 't') ADVANCE(306);
      END_STATE();
    case 125:
      if (lookahead == 'e') ADVANCE(307);
      END_STATE();
    case 126:
      if (lookahead == 'd') ADVANCE(308);
      if (lookahead == 's') ADVANCE(309);
      if (lookahead == 't') ADVANCE(310);
      END_STATE();
    case 127:
      if (lookahead == 'p') ADVANCE(311);
      if (lookahead == 'r') ADVANCE(312);
      END_STATE();
    case 128:
      if (lookahead == 'a') ADVANCE(313);
      END_STATE();
    case 129:
      if (lookahead == 'e') ADVANCE(314);
      END_STATE();
    case 130:
      if (lookahead == 'a') ADVANCE(315);
      END_STATE();
    case 131:
      if (lookahead == 'r') ADVANCE(316);
      if (lookahead == 's') ADVANCE(317);
      if (lookahead == 'w') ADVANCE(318);
      END_STATE();
    case 132:
      if (lookahead == 'e') ADVANCE(319);
      if (lookahead == 'o') ADVANCE(320);
      END_STATE();
    case 133:
      if (lookahead == 'b') ADVANCE(321);
      if (lookahead == 't') ADVANCE(322);
      END_STATE();
    case 134:
      if (lookahead == 'i') ADVANCE(323);
      END_STATE();
    case 135:
      if (lookahead == 'd') ADVANCE(324);
      if (lookahead == 't') ADVANCE(325);
      END_STATE();
    case 136:
      ADVANCE_MAP(
        'a', 326,
        'c', 327,
        'f', 328,
        'j', 329,
        'p', 330,
        's', 331,
        't', 332,
        'v', 333,
      );
      END_STATE();
    case 137:
      if (lookahead == 'l') ADVANCE(334);
      if (lookahead == 'n') ADVANCE(335);
      if (lookahead == 'r') ADVANCE(336);
      END_STATE();
    case 138:
      if (lookahead == 'a') ADVANCE(337);
      END_STATE();
    case 139:
      if (lookahead == 'n') ADVANCE(338);
      if (lookahead == 'r') ADVANCE(339);
      if (lookahead == 's') ADVANCE(340);
      END_STATE();
    case 140:
      if (lookahead == 'a') ADVANCE(341);
      if (lookahead == 'e') ADVANCE(342);
      if (lookahead == 'o') ADVANCE(343);
      if (lookahead == 'u') ADVANCE(344);
      END_STATE();
    case 141:
      if (lookahead == 'n') ADVANCE(345);
      if (lookahead == 't') ADVANCE(346);
      if (lookahead == 'z') ADVANCE(347);
      END_STATE();
    case 142:
      if (lookahead == 'r') ADVANCE(348);
      END_STATE();
    case 143:
      if (lookahead == 'u') ADVANCE(349);
      END_STATE();
    case 144:
      if (lookahead == 'a') ADVANCE(350);
      if (lookahead == 'l') ADVANCE(351);
      if (lookahead == 'o') ADVANCE(352);
      if (lookahead == 'r') ADVANCE(353);
      END_STATE();
    case 145:
      if (lookahead == 'b') ADVANCE(354);
      END_STATE();
    case 146:
      if (lookahead == 'a') ADVANCE(355);
      if (lookahead == 'r') ADVANCE(356);
      END_STATE();
    case 147:
      if (lookahead == 'i') ADVANCE(357);
      if (lookahead == 'r') ADVANCE(358);
      END_STATE();
    case 148:
      if (lookahead == 'i') ADVANCE(359);
      if (lookahead == 'k') ADVANCE(360);
      END_STATE();
    case 149:
      if (lookahead == 'e') ADVANCE(361);
      if (lookahead == 'm') ADVANCE(362);
      END_STATE();
    case 150:
      if (lookahead == 'e') ADVANCE(363);
      if (lookahead == 'r') ADVANCE(364);
      END_STATE();
    case 151:
      if (lookahead == 't') ADVANCE(365);
      END_STATE();
    case 152:
      ACCEPT_TOKEN(anon_sym_to);
      if (lookahead == 't') ADVANCE(366);
      END_STATE();
    case 153:
      if (lookahead == 'a') ADVANCE(367);
      END_STATE();
    case 154:
      if (lookahead == 'n') ADVANCE(368);
      END_STATE();
    case 155:
      if (lookahead == 'o') ADVANCE(369);
      END_STATE();
    case 156:
      if (lookahead == 'p') ADVANCE(370);
      END_STATE();
    case 157:
      ACCEPT_TOKEN(anon_sym_uV);
      END_STATE();
    case 158:
      ACCEPT_TOKEN(anon_sym_uW);
      END_STATE();
    case 159:
      if (lookahead == 'd') ADVANCE(371);
      if (lookahead == 't') ADVANCE(372);
      END_STATE();
    case 160:
      ACCEPT_TOKEN(anon_sym_up);
      END_STATE();
    case 161:
      ACCEPT_TOKEN(anon_sym_us);
      if (lookahead == 'e') ADVANCE(373);
      END_STATE();
    case 162:
      if (lookahead == 'l') ADVANCE(374);
      if (lookahead == 'r') ADVANCE(375);
      END_STATE();
    case 163:
      if (lookahead == 'l') ADVANCE(376);
      if (lookahead == 'r') ADVANCE(377);
      END_STATE();
    case 164:
      if (lookahead == 'l') ADVANCE(378);
      END_STATE();
    case 165:
      if (lookahead == 'v') ADVANCE(379);
      if (lookahead == 'y') ADVANCE(380);
      END_STATE();
    case 166:
      if (lookahead == 't') ADVANCE(381);
      END_STATE();
    case 167:
      if (lookahead == 's') ADVANCE(382);
      END_STATE();
    case 168:
      if (lookahead == 'r') ADVANCE(383);
      if (lookahead == 't') ADVANCE(384);
      END_STATE();
    case 169:
      ACCEPT_TOKEN(anon_sym_yd);
      END_STATE();
    case 170:
      if (lookahead == 's') ADVANCE(385);
      END_STATE();
    case 171:
      ACCEPT_TOKEN(anon_sym_GHz);
      END_STATE();
    case 172:
      ACCEPT_TOKEN(anon_sym_MHz);
      END_STATE();
    case 173:
      if (lookahead == 'v') ADVANCE(386);
      END_STATE();
    case 174:
      if (lookahead == 'e') ADVANCE(387);
      if (lookahead == 'u') ADVANCE(388);
      END_STATE();
    case 175:
      if (lookahead == 'p') ADVANCE(389);
      END_STATE();
    case 176:
      if (lookahead == 'e') ADVANCE(390);
      END_STATE();
    case 177:
      if (lookahead == 'e') ADVANCE(391);
      END_STATE();
    case 178:
      if (lookahead == 'i') ADVANCE(392);
      END_STATE();
    case 179:
      ACCEPT_TOKEN(anon_sym_agl);
      END_STATE();
    case 180:
      if (lookahead == 'o') ADVANCE(393);
      END_STATE();
    case 181:
      if (lookahead == 'n') ADVANCE(394);
      END_STATE();
    case 182:
      if (lookahead == 'i') ADVANCE(395);
      END_STATE();
    case 183:
      if (lookahead == 'l') ADVANCE(396);
      END_STATE();
    case 184:
      if (lookahead == 'l') ADVANCE(397);
      END_STATE();
    case 185:
      if (lookahead == 'e') ADVANCE(398);
      END_STATE();
    case 186:
      if (lookahead == 'r') ADVANCE(399);
      END_STATE();
    case 187:
      ACCEPT_TOKEN(anon_sym_ask);
      END_STATE();
    case 188:
      if (lookahead == 'h') ADVANCE(400);
      END_STATE();
    case 189:
      if (lookahead == 'r') ADVANCE(401);
      END_STATE();
    case 190:
      if (lookahead == 'u') ADVANCE(402);
      END_STATE();
    case 191:
      if (lookahead == 'd') ADVANCE(403);
      END_STATE();
    case 192:
      if (lookahead == 'e') ADVANCE(404);
      END_STATE();
    case 193:
      if (lookahead == 'o') ADVANCE(405);
      END_STATE();
    case 194:
      if (lookahead == 'i') ADVANCE(406);
      END_STATE();
    case 195:
      if (lookahead == 'o') ADVANCE(407);
      END_STATE();
    case 196:
      if (lookahead == 'n') ADVANCE(408);
      END_STATE();
    case 197:
      if (lookahead == 'c') ADVANCE(409);
      END_STATE();
    case 198:
      ACCEPT_TOKEN(anon_sym_bow);
      END_STATE();
    case 199:
      if (lookahead == 'i') ADVANCE(410);
      if (lookahead == 'n') ADVANCE(411);
      END_STATE();
    case 200:
      if (lookahead == 'l') ADVANCE(412);
      END_STATE();
    case 201:
      if (lookahead == 'p') ADVANCE(413);
      END_STATE();
    case 202:
      if (lookahead == 'l') ADVANCE(414);
      END_STATE();
    case 203:
      if (lookahead == 'i') ADVANCE(415);
      END_STATE();
    case 204:
      if (lookahead == 'r') ADVANCE(416);
      END_STATE();
    case 205:
      if (lookahead == 'c') ADVANCE(417);
      END_STATE();
    case 206:
      if (lookahead == 't') ADVANCE(418);
      END_STATE();
    case 207:
      if (lookahead == 'i') ADVANCE(419);
      END_STATE();
    case 208:
      if (lookahead == 'c') ADVANCE(420);
      END_STATE();
    case 209:
      if (lookahead == 'y') ADVANCE(421);
      END_STATE();
    case 210:
      if (lookahead == 'd') ADVANCE(422);
      if (lookahead == 's') ADVANCE(423);
      END_STATE();
    case 211:
      if (lookahead == 'b') ADVANCE(424);
      END_STATE();
    case 212:
      if (lookahead == 'd') ADVANCE(425);
      if (lookahead == 'f') ADVANCE(426);
      if (lookahead == 'n') ADVANCE(427);
      if (lookahead == 's') ADVANCE(428);
      END_STATE();
    case 213:
      if (lookahead == 'r') ADVANCE(429);
      END_STATE();
    case 214:
      if (lookahead == 'p') ADVANCE(430);
      END_STATE();
    case 215:
      if (lookahead == 'e') ADVANCE(431);
      END_STATE();
    case 216:
      ACCEPT_TOKEN(anon_sym_dBW);
      END_STATE();
    case 217:
      ACCEPT_TOKEN(anon_sym_dBd);
      END_STATE();
    case 218:
      ACCEPT_TOKEN(anon_sym_dBi);
      END_STATE();
    case 219:
      ACCEPT_TOKEN(anon_sym_dBm);
      END_STATE();
    case 220:
      if (lookahead == 'a') ADVANCE(432);
      if (lookahead == 'e') ADVANCE(433);
      if (lookahead == 'u') ADVANCE(434);
      END_STATE();
    case 221:
      if (lookahead == 'i') ADVANCE(435);
      END_STATE();
    case 222:
      ACCEPT_TOKEN(anon_sym_deg);
      if (lookahead == 'C') ADVANCE(436);
      if (lookahead == 'F') ADVANCE(437);
      if (lookahead == 'r') ADVANCE(438);
      END_STATE();
    case 223:
      if (lookahead == 'a') ADVANCE(439);
      if (lookahead == 'i') ADVANCE(440);
      END_STATE();
    case 224:
      if (lookahead == 'e') ADVANCE(441);
      END_STATE();
    case 225:
      if (lookahead == 'i') ADVANCE(442);
      END_STATE();
    case 226:
      if (lookahead == 'm') ADVANCE(443);
      END_STATE();
    case 227:
      if (lookahead == 'l') ADVANCE(444);
      END_STATE();
    case 228:
      if (lookahead == 'e') ADVANCE(445);
      END_STATE();
    case 229:
      if (lookahead == 'p') ADVANCE(446);
      if (lookahead == 't') ADVANCE(447);
      END_STATE();
    case 230:
      if (lookahead == 'i') ADVANCE(448);
      END_STATE();
    case 231:
      ACCEPT_TOKEN(anon_sym_dms);
      END_STATE();
    case 232:
      if (lookahead == 'n') ADVANCE(449);
      END_STATE();
    case 233:
      if (lookahead == 'f') ADVANCE(450);
      END_STATE();
    case 234:
      ACCEPT_TOKEN(anon_sym_due);
      END_STATE();
    case 235:
      if (lookahead == 'l') ADVANCE(451);
      END_STATE();
    case 236:
      if (lookahead == 'y') ADVANCE(452);
      END_STATE();
    case 237:
      if (lookahead == 't') ADVANCE(453);
      END_STATE();
    case 238:
      if (lookahead == 'i') ADVANCE(454);
      END_STATE();
    case 239:
      if (lookahead == 'p') ADVANCE(455);
      END_STATE();
    case 240:
      if (lookahead == 'v') ADVANCE(456);
      END_STATE();
    case 241:
      if (lookahead == 's') ADVANCE(457);
      END_STATE();
    case 242:
      if (lookahead == 'a') ADVANCE(458);
      END_STATE();
    case 243:
      ACCEPT_TOKEN(anon_sym_erp);
      END_STATE();
    case 244:
      if (lookahead == 's') ADVANCE(459);
      END_STATE();
    case 245:
      if (lookahead == 'e') ADVANCE(460);
      END_STATE();
    case 246:
      if (lookahead == 'e') ADVANCE(461);
      END_STATE();
    case 247:
      if (lookahead == 'l') ADVANCE(462);
      END_STATE();
    case 248:
      if (lookahead == 'i') ADVANCE(463);
      END_STATE();
    case 249:
      if (lookahead == 'l') ADVANCE(464);
      END_STATE();
    case 250:
      if (lookahead == 'u') ADVANCE(465);
      END_STATE();
    case 251:
      if (lookahead == 't') ADVANCE(466);
      END_STATE();
    case 252:
      if (lookahead == 'e') ADVANCE(467);
      END_STATE();
    case 253:
      if (lookahead == 'd') ADVANCE(468);
      END_STATE();
    case 254:
      ACCEPT_TOKEN(anon_sym_for);
      if (lookahead == 'w') ADVANCE(469);
      END_STATE();
    case 255:
      if (lookahead == 'e') ADVANCE(470);
      if (lookahead == 'q') ADVANCE(471);
      END_STATE();
    case 256:
      if (lookahead == 'm') ADVANCE(472);
      END_STATE();
    case 257:
      if (lookahead == 'l') ADVANCE(473);
      END_STATE();
    case 258:
      if (lookahead == 'n') ADVANCE(474);
      END_STATE();
    case 259:
      if (lookahead == 'e') ADVANCE(475);
      END_STATE();
    case 260:
      if (lookahead == 'u') ADVANCE(476);
      END_STATE();
    case 261:
      if (lookahead == 's') ADVANCE(477);
      END_STATE();
    case 262:
      if (lookahead == 't') ADVANCE(478);
      END_STATE();
    case 263:
      if (lookahead == 'a') ADVANCE(479);
      END_STATE();
    case 264:
      if (lookahead == 'g') ADVANCE(480);
      END_STATE();
    case 265:
      if (lookahead == 'h') ADVANCE(481);
      END_STATE();
    case 266:
      if (lookahead == 'd') ADVANCE(482);
      END_STATE();
    case 267:
      ACCEPT_TOKEN(anon_sym_hop);
      END_STATE();
    case 268:
      if (lookahead == 'i') ADVANCE(483);
      END_STATE();
    case 269:
      if (lookahead == 'e') ADVANCE(484);
      END_STATE();
    case 270:
      if (lookahead == 'e') ADVANCE(485);
      END_STATE();
    case 271:
      if (lookahead == 'u') ADVANCE(486);
      END_STATE();
    case 272:
      if (lookahead == 't') ADVANCE(487);
      END_STATE();
    case 273:
      if (lookahead == 'l') ADVANCE(488);
      END_STATE();
    case 274:
      if (lookahead == 'n') ADVANCE(489);
      END_STATE();
    case 275:
      if (lookahead == 'p') ADVANCE(490);
      END_STATE();
    case 276:
      if (lookahead == 'i') ADVANCE(491);
      END_STATE();
    case 277:
      if (lookahead == 'a') ADVANCE(492);
      END_STATE();
    case 278:
      ACCEPT_TOKEN(anon_sym_kHz);
      END_STATE();
    case 279:
      if (lookahead == 'e') ADVANCE(493);
      END_STATE();
    case 280:
      if (lookahead == 'd') ADVANCE(494);
      END_STATE();
    case 281:
      if (lookahead == 'i') ADVANCE(495);
      END_STATE();
    case 282:
      ACCEPT_TOKEN(anon_sym_let);
      END_STATE();
    case 283:
      if (lookahead == 'e') ADVANCE(496);
      END_STATE();
    case 284:
      if (lookahead == 'i') ADVANCE(497);
      END_STATE();
    case 285:
      if (lookahead == 'e') ADVANCE(498);
      if (lookahead == 'k') ADVANCE(499);
      END_STATE();
    case 286:
      if (lookahead == 'd') ADVANCE(500);
      END_STATE();
    case 287:
      if (lookahead == 'g') ADVANCE(501);
      END_STATE();
    case 288:
      if (lookahead == 's') ADVANCE(502);
      END_STATE();
    case 289:
      ACCEPT_TOKEN(anon_sym_low);
      END_STATE();
    case 290:
      if (lookahead == 'i') ADVANCE(503);
      END_STATE();
    case 291:
      if (lookahead == 'n') ADVANCE(504);
      END_STATE();
    case 292:
      if (lookahead == 'i') ADVANCE(505);
      END_STATE();
    case 293:
      if (lookahead == 'e') ADVANCE(506);
      END_STATE();
    case 294:
      ACCEPT_TOKEN(anon_sym_min);
      END_STATE();
    case 295:
      if (lookahead == 'e') ADVANCE(507);
      END_STATE();
    case 296:
      if (lookahead == '2') ADVANCE(508);
      if (lookahead == '8') ADVANCE(509);
      END_STATE();
    case 297:
      if (lookahead == 'd') ADVANCE(510);
      END_STATE();
    case 298:
      ACCEPT_TOKEN(anon_sym_net);
      END_STATE();
    case 299:
      if (lookahead == 's') ADVANCE(511);
      END_STATE();
    case 300:
      if (lookahead == 'i') ADVANCE(512);
      END_STATE();
    case 301:
      if (lookahead == 'u') ADVANCE(513);
      END_STATE();
    case 302:
      if (lookahead == 's') ADVANCE(514);
      END_STATE();
    case 303:
      ACCEPT_TOKEN(anon_sym_ohm);
      if (lookahead == '-') ADVANCE(515);
      if (lookahead == 's') ADVANCE(516);
      END_STATE();
    case 304:
      if (lookahead == '-') ADVANCE(517);
      END_STATE();
    case 305:
      if (lookahead == 'n') ADVANCE(518);
      END_STATE();
    case 306:
      ACCEPT_TOKEN(anon_sym_out);
      if (lookahead == 'e') ADVANCE(519);
      if (lookahead == 'p') ADVANCE(520);
      END_STATE();
    case 307:
      if (lookahead == 'r') ADVANCE(521);
      END_STATE();
    case 308:
      ACCEPT_TOKEN(anon_sym_pad);
      END_STATE();
    case 309:
      if (lookahead == 's') ADVANCE(522);
      END_STATE();
    case 310:
      if (lookahead == 't') ADVANCE(523);
      END_STATE();
    case 311:
      ACCEPT_TOKEN(anon_sym_pep);
      END_STATE();
    case 312:
      ACCEPT_TOKEN(anon_sym_per);
      if (lookahead == 'm') ADVANCE(524);
      END_STATE();
    case 313:
      if (lookahead == 's') ADVANCE(525);
      END_STATE();
    case 314:
      if (lookahead == 'c') ADVANCE(526);
      END_STATE();
    case 315:
      if (lookahead == 'c') ADVANCE(527);
      END_STATE();
    case 316:
      if (lookahead == 't') ADVANCE(528);
      END_STATE();
    case 317:
      if (lookahead == 'i') ADVANCE(529);
      END_STATE();
    case 318:
      if (lookahead == 'e') ADVANCE(530);
      END_STATE();
    case 319:
      if (lookahead == 'a') ADVANCE(531);
      END_STATE();
    case 320:
      if (lookahead == 'f') ADVANCE(532);
      if (lookahead == 't') ADVANCE(533);
      END_STATE();
    case 321:
      if (lookahead == 'l') ADVANCE(534);
      END_STATE();
    case 322:
      ACCEPT_TOKEN(anon_sym_put);
      END_STATE();
    case 323:
      if (lookahead == 'e') ADVANCE(535);
      END_STATE();
    case 324:
      if (lookahead == 'i') ADVANCE(536);
      END_STATE();
    case 325:
      if (lookahead == 'e') ADVANCE(537);
      if (lookahead == 'i') ADVANCE(538);
      END_STATE();
    case 326:
      if (lookahead == 'c') ADVANCE(539);
      if (lookahead == 'd') ADVANCE(540);
      if (lookahead == 'l') ADVANCE(541);
      END_STATE();
    case 327:
      if (lookahead == 'a') ADVANCE(542);
      if (lookahead == 'e') ADVANCE(543);
      END_STATE();
    case 328:
      if (lookahead == 'e') ADVANCE(544);
      if (lookahead == 'l') ADVANCE(545);
      END_STATE();
    case 329:
      if (lookahead == 'e') ADVANCE(546);
      END_STATE();
    case 330:
      if (lookahead == 'e') ADVANCE(547);
      END_STATE();
    case 331:
      if (lookahead == 'i') ADVANCE(548);
      if (lookahead == 'o') ADVANCE(549);
      END_STATE();
    case 332:
      if (lookahead == 'u') ADVANCE(550);
      END_STATE();
    case 333:
      if (lookahead == 'e') ADVANCE(551);
      END_STATE();
    case 334:
      if (lookahead == 'e') ADVANCE(552);
      END_STATE();
    case 335:
      ACCEPT_TOKEN(anon_sym_run);
      END_STATE();
    case 336:
      if (lookahead == 'a') ADVANCE(553);
      END_STATE();
    case 337:
      if (lookahead == 'l') ADVANCE(554);
      END_STATE();
    case 338:
      if (lookahead == 's') ADVANCE(555);
      END_STATE();
    case 339:
      if (lookahead == 'i') ADVANCE(556);
      if (lookahead == 'v') ADVANCE(557);
      END_STATE();
    case 340:
      if (lookahead == 's') ADVANCE(558);
      END_STATE();
    case 341:
      if (lookahead == 'r') ADVANCE(559);
      END_STATE();
    case 342:
      if (lookahead == 'e') ADVANCE(560);
      END_STATE();
    case 343:
      if (lookahead == 'r') ADVANCE(561);
      END_STATE();
    case 344:
      if (lookahead == 'n') ADVANCE(562);
      END_STATE();
    case 345:
      if (lookahead == 'a') ADVANCE(563);
      if (lookahead == 'c') ADVANCE(564);
      END_STATE();
    case 346:
      if (lookahead == 'e') ADVANCE(565);
      END_STATE();
    case 347:
      if (lookahead == 'e') ADVANCE(566);
      END_STATE();
    case 348:
      ACCEPT_TOKEN(anon_sym_snr);
      END_STATE();
    case 349:
      if (lookahead == 'r') ADVANCE(567);
      END_STATE();
    case 350:
      if (lookahead == 'c') ADVANCE(568);
      END_STATE();
    case 351:
      if (lookahead == 'i') ADVANCE(569);
      END_STATE();
    case 352:
      if (lookahead == 't') ADVANCE(570);
      END_STATE();
    case 353:
      if (lookahead == 'e') ADVANCE(571);
      END_STATE();
    case 354:
      ACCEPT_TOKEN(anon_sym_ssb);
      if (lookahead == '-') ADVANCE(572);
      END_STATE();
    case 355:
      if (lookahead == 't') ADVANCE(573);
      END_STATE();
    case 356:
      if (lookahead == 'a') ADVANCE(574);
      END_STATE();
    case 357:
      if (lookahead == 't') ADVANCE(575);
      END_STATE();
    case 358:
      ACCEPT_TOKEN(anon_sym_swr);
      END_STATE();
    case 359:
      if (lookahead == 'l') ADVANCE(576);
      END_STATE();
    case 360:
      if (lookahead == 'e') ADVANCE(577);
      END_STATE();
    case 361:
      ACCEPT_TOKEN(anon_sym_tee);
      END_STATE();
    case 362:
      if (lookahead == 'p') ADVANCE(578);
      END_STATE();
    case 363:
      if (lookahead == 'n') ADVANCE(579);
      END_STATE();
    case 364:
      if (lookahead == 'e') ADVANCE(580);
      if (lookahead == 'o') ADVANCE(581);
      END_STATE();
    case 365:
      if (lookahead == 'l') ADVANCE(582);
      END_STATE();
    case 366:
      if (lookahead == 'a') ADVANCE(583);
      END_STATE();
    case 367:
      if (lookahead == 'n') ADVANCE(584);
      END_STATE();
    case 368:
      if (lookahead == 'e') ADVANCE(585);
      END_STATE();
    case 369:
      if (lookahead == '-') ADVANCE(586);
      END_STATE();
    case 370:
      if (lookahead == 'i') ADVANCE(587);
      END_STATE();
    case 371:
      if (lookahead == 'e') ADVANCE(588);
      END_STATE();
    case 372:
      if (lookahead == 'i') ADVANCE(589);
      END_STATE();
    case 373:
      ACCEPT_TOKEN(anon_sym_use);
      END_STATE();
    case 374:
      if (lookahead == 'i') ADVANCE(590);
      END_STATE();
    case 375:
      if (lookahead == 'i') ADVANCE(591);
      END_STATE();
    case 376:
      if (lookahead == 'o') ADVANCE(592);
      END_STATE();
    case 377:
      if (lookahead == 't') ADVANCE(593);
      END_STATE();
    case 378:
      if (lookahead == 't') ADVANCE(594);
      END_STATE();
    case 379:
      if (lookahead == 'e') ADVANCE(595);
      END_STATE();
    case 380:
      ACCEPT_TOKEN(anon_sym_way);
      if (lookahead == 's') ADVANCE(596);
      END_STATE();
    case 381:
      ACCEPT_TOKEN(anon_sym_wet);
      END_STATE();
    case 382:
      if (lookahead == '8') ADVANCE(597);
      END_STATE();
    case 383:
      if (lookahead == 'e') ADVANCE(598);
      END_STATE();
    case 384:
      if (lookahead == 'h') ADVANCE(599);
      END_STATE();
    case 385:
      ACCEPT_TOKEN(anon_sym_yes);
      END_STATE();
    case 386:
      if (lookahead == 'e') ADVANCE(600);
      END_STATE();
    case 387:
      if (lookahead == 'p') ADVANCE(601);
      END_STATE();
    case 388:
      if (lookahead == 'r') ADVANCE(602);
      END_STATE();
    case 389:
      if (lookahead == 't') ADVANCE(603);
      END_STATE();
    case 390:
      if (lookahead == 'd') ADVANCE(604);
      END_STATE();
    case 391:
      if (lookahead == 'r') ADVANCE(605);
      END_STATE();
    case 392:
      if (lookahead == 'n') ADVANCE(606);
      END_STATE();
    case 393:
      if (lookahead == 'c') ADVANCE(607);
      END_STATE();
    case 394:
      if (lookahead == 'e') ADVANCE(608);
      END_STATE();
    case 395:
      if (lookahead == 'e') ADVANCE(609);
      END_STATE();
    case 396:
      if (lookahead == 'i') ADVANCE(610);
      END_STATE();
    case 397:
      ACCEPT_TOKEN(anon_sym_amsl);
      END_STATE();
    case 398:
      if (lookahead == 'n') ADVANCE(611);
      END_STATE();
    case 399:
      if (lookahead == 't') ADVANCE(612);
      END_STATE();
    case 400:
      if (lookahead == 'o') ADVANCE(613);
      END_STATE();
    case 401:
      if (lookahead == 'a') ADVANCE(614);
      END_STATE();
    case 402:
      if (lookahead == 'n') ADVANCE(615);
      END_STATE();
    case 403:
      ACCEPT_TOKEN(anon_sym_band);
      if (lookahead == 'w') ADVANCE(616);
      END_STATE();
    case 404:
      if (lookahead == 'l') ADVANCE(617);
      END_STATE();
    case 405:
      if (lookahead == 'w') ADVANCE(618);
      END_STATE();
    case 406:
      if (lookahead == 'd') ADVANCE(619);
      END_STATE();
    case 407:
      if (lookahead == 'n') ADVANCE(620);
      END_STATE();
    case 408:
      if (lookahead == 'k') ADVANCE(621);
      END_STATE();
    case 409:
      if (lookahead == 'k') ADVANCE(622);
      END_STATE();
    case 410:
      if (lookahead == 'd') ADVANCE(623);
      END_STATE();
    case 411:
      if (lookahead == 'c') ADVANCE(624);
      END_STATE();
    case 412:
      if (lookahead == 'i') ADVANCE(625);
      END_STATE();
    case 413:
      ACCEPT_TOKEN(anon_sym_bump);
      END_STATE();
    case 414:
      if (lookahead == 'e') ADVANCE(626);
      END_STATE();
    case 415:
      if (lookahead == 'b') ADVANCE(627);
      END_STATE();
    case 416:
      if (lookahead == 'i') ADVANCE(628);
      END_STATE();
    case 417:
      if (lookahead == 'a') ADVANCE(629);
      END_STATE();
    case 418:
      if (lookahead == 'i') ADVANCE(630);
      END_STATE();
    case 419:
      if (lookahead == 'n') ADVANCE(631);
      END_STATE();
    case 420:
      if (lookahead == 'u') ADVANCE(632);
      END_STATE();
    case 421:
      ACCEPT_TOKEN(anon_sym_city);
      END_STATE();
    case 422:
      ACCEPT_TOKEN(anon_sym_clad);
      END_STATE();
    case 423:
      if (lookahead == 's') ADVANCE(633);
      END_STATE();
    case 424:
      if (lookahead == 'i') ADVANCE(634);
      END_STATE();
    case 425:
      if (lookahead == 'i') ADVANCE(635);
      if (lookahead == 'u') ADVANCE(636);
      END_STATE();
    case 426:
      if (lookahead == 'i') ADVANCE(637);
      END_STATE();
    case 427:
      if (lookahead == 'e') ADVANCE(638);
      END_STATE();
    case 428:
      if (lookahead == 't') ADVANCE(639);
      END_STATE();
    case 429:
      if (lookahead == 'e') ADVANCE(640);
      END_STATE();
    case 430:
      if (lookahead == 'l') ADVANCE(641);
      END_STATE();
    case 431:
      if (lookahead == 'r') ADVANCE(642);
      END_STATE();
    case 432:
      ACCEPT_TOKEN(anon_sym_data);
      END_STATE();
    case 433:
      ACCEPT_TOKEN(anon_sym_date);
      if (lookahead == 'd') ADVANCE(643);
      END_STATE();
    case 434:
      if (lookahead == 'm') ADVANCE(644);
      END_STATE();
    case 435:
      if (lookahead == 'n') ADVANCE(645);
      END_STATE();
    case 436:
      ACCEPT_TOKEN(anon_sym_degC);
      END_STATE();
    case 437:
      ACCEPT_TOKEN(anon_sym_degF);
      END_STATE();
    case 438:
      if (lookahead == 'e') ADVANCE(646);
      END_STATE();
    case 439:
      if (lookahead == 'y') ADVANCE(647);
      END_STATE();
    case 440:
      if (lookahead == 'v') ADVANCE(648);
      END_STATE();
    case 441:
      if (lookahead == 'n') ADVANCE(649);
      END_STATE();
    case 442:
      if (lookahead == 'c') ADVANCE(650);
      END_STATE();
    case 443:
      if (lookahead == 'e') ADVANCE(651);
      END_STATE();
    case 444:
      if (lookahead == 'e') ADVANCE(652);
      END_STATE();
    case 445:
      if (lookahead == 'c') ADVANCE(653);
      END_STATE();
    case 446:
      if (lookahead == 'l') ADVANCE(654);
      END_STATE();
    case 447:
      if (lookahead == 'a') ADVANCE(655);
      END_STATE();
    case 448:
      if (lookahead == 'd') ADVANCE(656);
      END_STATE();
    case 449:
      ACCEPT_TOKEN(anon_sym_down);
      END_STATE();
    case 450:
      if (lookahead == 't') ADVANCE(657);
      END_STATE();
    case 451:
      if (lookahead == 'e') ADVANCE(658);
      END_STATE();
    case 452:
      ACCEPT_TOKEN(anon_sym_duty);
      END_STATE();
    case 453:
      if (lookahead == 'i') ADVANCE(659);
      END_STATE();
    case 454:
      if (lookahead == 'c') ADVANCE(660);
      END_STATE();
    case 455:
      ACCEPT_TOKEN(anon_sym_eirp);
      END_STATE();
    case 456:
      if (lookahead == 'a') ADVANCE(661);
      END_STATE();
    case 457:
      ACCEPT_TOKEN(anon_sym_ends);
      END_STATE();
    case 458:
      if (lookahead == 'l') ADVANCE(662);
      END_STATE();
    case 459:
      if (lookahead == '8') ADVANCE(663);
      END_STATE();
    case 460:
      if (lookahead == 's') ADVANCE(664);
      END_STATE();
    case 461:
      if (lookahead == 'c') ADVANCE(665);
      END_STATE();
    case 462:
      if (lookahead == 's') ADVANCE(666);
      END_STATE();
    case 463:
      if (lookahead == 'l') ADVANCE(667);
      END_STATE();
    case 464:
      if (lookahead == 'd') ADVANCE(668);
      END_STATE();
    case 465:
      if (lookahead == 'r') ADVANCE(669);
      END_STATE();
    case 466:
      if (lookahead == 'e') ADVANCE(670);
      END_STATE();
    case 467:
      if (lookahead == 'd') ADVANCE(671);
      END_STATE();
    case 468:
      if (lookahead == 'b') ADVANCE(672);
      END_STATE();
    case 469:
      if (lookahead == 'a') ADVANCE(673);
      END_STATE();
    case 470:
      if (lookahead == '-') ADVANCE(674);
      END_STATE();
    case 471:
      if (lookahead == 'u') ADVANCE(675);
      END_STATE();
    case 472:
      ACCEPT_TOKEN(anon_sym_from);
      END_STATE();
    case 473:
      ACCEPT_TOKEN(anon_sym_full);
      END_STATE();
    case 474:
      ACCEPT_TOKEN(anon_sym_gain);
      END_STATE();
    case 475:
      if (lookahead == 'r') ADVANCE(676);
      END_STATE();
    case 476:
      if (lookahead == 'n') ADVANCE(677);
      END_STATE();
    case 477:
      if (lookahead == 's') ADVANCE(678);
      END_STATE();
    case 478:
      ACCEPT_TOKEN(anon_sym_haat);
      END_STATE();
    case 479:
      if (lookahead == '-') ADVANCE(679);
      END_STATE();
    case 480:
      if (lookahead == 'h') ADVANCE(680);
      END_STATE();
    case 481:
      ACCEPT_TOKEN(anon_sym_high);
      END_STATE();
    case 482:
      if (lookahead == 'e') ADVANCE(681);
      END_STATE();
    case 483:
      if (lookahead == 'z') ADVANCE(682);
      END_STATE();
    case 484:
      if (lookahead == 'd') ADVANCE(683);
      END_STATE();
    case 485:
      if (lookahead == 'r') ADVANCE(684);
      END_STATE();
    case 486:
      if (lookahead == 't') ADVANCE(685);
      END_STATE();
    case 487:
      if (lookahead == 'e') ADVANCE(686);
      if (lookahead == 'r') ADVANCE(687);
      END_STATE();
    case 488:
      if (lookahead == 'a') ADVANCE(688);
      END_STATE();
    case 489:
      if (lookahead == 's') ADVANCE(689);
      END_STATE();
    case 490:
      if (lookahead == 'e') ADVANCE(690);
      END_STATE();
    case 491:
      if (lookahead == 's') ADVANCE(691);
      END_STATE();
    case 492:
      if (lookahead == 'c') ADVANCE(692);
      END_STATE();
    case 493:
      if (lookahead == 'd') ADVANCE(693);
      END_STATE();
    case 494:
      ACCEPT_TOKEN(anon_sym_kind);
      END_STATE();
    case 495:
      if (lookahead == 't') ADVANCE(694);
      END_STATE();
    case 496:
      if (lookahead == 'n') ADVANCE(695);
      END_STATE();
    case 497:
      if (lookahead == 't') ADVANCE(696);
      END_STATE();
    case 498:
      if (lookahead == 'a') ADVANCE(697);
      END_STATE();
    case 499:
      ACCEPT_TOKEN(anon_sym_link);
      END_STATE();
    case 500:
      ACCEPT_TOKEN(anon_sym_load);
      END_STATE();
    case 501:
      if (lookahead == 'i') ADVANCE(698);
      END_STATE();
    case 502:
      ACCEPT_TOKEN(anon_sym_loss);
      if (lookahead == '-') ADVANCE(699);
      END_STATE();
    case 503:
      if (lookahead == 'm') ADVANCE(700);
      END_STATE();
    case 504:
      ACCEPT_TOKEN(anon_sym_mean);
      END_STATE();
    case 505:
      if (lookahead == 'u') ADVANCE(701);
      END_STATE();
    case 506:
      if (lookahead == 'r') ADVANCE(702);
      END_STATE();
    case 507:
      ACCEPT_TOKEN(anon_sym_mode);
      if (lookahead == 'l') ADVANCE(703);
      END_STATE();
    case 508:
      if (lookahead == '7') ADVANCE(704);
      END_STATE();
    case 509:
      if (lookahead == '3') ADVANCE(705);
      END_STATE();
    case 510:
      ACCEPT_TOKEN(anon_sym_need);
      END_STATE();
    case 511:
      if (lookahead == 'e') ADVANCE(706);
      END_STATE();
    case 512:
      if (lookahead == 'n') ADVANCE(707);
      END_STATE();
    case 513:
      if (lookahead == 'p') ADVANCE(708);
      END_STATE();
    case 514:
      if (lookahead == 'e') ADVANCE(709);
      END_STATE();
    case 515:
      if (lookahead == 'm') ADVANCE(710);
      END_STATE();
    case 516:
      ACCEPT_TOKEN(anon_sym_ohms);
      END_STATE();
    case 517:
      if (lookahead == 'e') ADVANCE(711);
      END_STATE();
    case 518:
      ACCEPT_TOKEN(anon_sym_open);
      END_STATE();
    case 519:
      if (lookahead == 'r') ADVANCE(712);
      END_STATE();
    case 520:
      if (lookahead == 'u') ADVANCE(713);
      END_STATE();
    case 521:
      ACCEPT_TOKEN(anon_sym_over);
      END_STATE();
    case 522:
      if (lookahead == 'e') ADVANCE(714);
      END_STATE();
    case 523:
      if (lookahead == 'e') ADVANCE(715);
      END_STATE();
    case 524:
      if (lookahead == 'i') ADVANCE(716);
      END_STATE();
    case 525:
      if (lookahead == 'e') ADVANCE(717);
      END_STATE();
    case 526:
      if (lookahead == 'e') ADVANCE(718);
      END_STATE();
    case 527:
      if (lookahead == 'e') ADVANCE(719);
      END_STATE();
    case 528:
      ACCEPT_TOKEN(anon_sym_port);
      END_STATE();
    case 529:
      if (lookahead == 't') ADVANCE(720);
      END_STATE();
    case 530:
      if (lookahead == 'r') ADVANCE(721);
      END_STATE();
    case 531:
      if (lookahead == 'm') ADVANCE(722);
      END_STATE();
    case 532:
      if (lookahead == 'i') ADVANCE(723);
      END_STATE();
    case 533:
      if (lookahead == 'e') ADVANCE(724);
      END_STATE();
    case 534:
      if (lookahead == 'i') ADVANCE(725);
      END_STATE();
    case 535:
      if (lookahead == 't') ADVANCE(726);
      END_STATE();
    case 536:
      if (lookahead == 'u') ADVANCE(727);
      END_STATE();
    case 537:
      if (lookahead == 'd') ADVANCE(728);
      END_STATE();
    case 538:
      if (lookahead == 'n') ADVANCE(729);
      if (lookahead == 'o') ADVANCE(730);
      END_STATE();
    case 539:
      if (lookahead == 't') ADVANCE(731);
      END_STATE();
    case 540:
      ACCEPT_TOKEN(anon_sym_read);
      if (lookahead == 'i') ADVANCE(732);
      END_STATE();
    case 541:
      if (lookahead == 'i') ADVANCE(733);
      END_STATE();
    case 542:
      if (lookahead == 'l') ADVANCE(734);
      END_STATE();
    case 543:
      if (lookahead == 'i') ADVANCE(735);
      END_STATE();
    case 544:
      if (lookahead == 'r') ADVANCE(736);
      END_STATE();
    case 545:
      if (lookahead == 'e') ADVANCE(737);
      END_STATE();
    case 546:
      if (lookahead == 'c') ADVANCE(738);
      END_STATE();
    case 547:
      if (lookahead == 'a') ADVANCE(739);
      END_STATE();
    case 548:
      if (lookahead == 'd') ADVANCE(740);
      if (lookahead == 's') ADVANCE(741);
      END_STATE();
    case 549:
      if (lookahead == 'l') ADVANCE(742);
      if (lookahead == 'n') ADVANCE(743);
      END_STATE();
    case 550:
      if (lookahead == 'r') ADVANCE(744);
      END_STATE();
    case 551:
      if (lookahead == 'r') ADVANCE(745);
      END_STATE();
    case 552:
      if (lookahead == 's') ADVANCE(746);
      END_STATE();
    case 553:
      if (lookahead == 'l') ADVANCE(747);
      END_STATE();
    case 554:
      if (lookahead == 'e') ADVANCE(748);
      END_STATE();
    case 555:
      if (lookahead == 'i') ADVANCE(749);
      END_STATE();
    case 556:
      if (lookahead == 'e') ADVANCE(750);
      END_STATE();
    case 557:
      if (lookahead == 'i') ADVANCE(751);
      END_STATE();
    case 558:
      if (lookahead == 'i') ADVANCE(752);
      END_STATE();
    case 559:
      if (lookahead == 'e') ADVANCE(753);
      END_STATE();
    case 560:
      if (lookahead == 't') ADVANCE(754);
      END_STATE();
    case 561:
      if (lookahead == 't') ADVANCE(755);
      END_STATE();
    case 562:
      if (lookahead == 't') ADVANCE(756);
      END_STATE();
    case 563:
      if (lookahead == 'd') ADVANCE(757);
      END_STATE();
    case 564:
      if (lookahead == 'e') ADVANCE(758);
      END_STATE();
    case 565:
      if (lookahead == '-') ADVANCE(759);
      END_STATE();
    case 566:
      ACCEPT_TOKEN(anon_sym_size);
      END_STATE();
    case 567:
      if (lookahead == 'c') ADVANCE(760);
      END_STATE();
    case 568:
      if (lookahead == 'i') ADVANCE(761);
      END_STATE();
    case 569:
      if (lookahead == 't') ADVANCE(762);
      END_STATE();
    case 570:
      ACCEPT_TOKEN(anon_sym_spot);
      END_STATE();
    case 571:
      if (lookahead == 'a') ADVANCE(763);
      END_STATE();
    case 572:
      if (lookahead == 'p') ADVANCE(764);
      END_STATE();
    case 573:
      if (lookahead == 'i') ADVANCE(765);
      END_STATE();
    case 574:
      if (lookahead == 'n') ADVANCE(766);
      END_STATE();
    case 575:
      if (lookahead == 'c') ADVANCE(767);
      END_STATE();
    case 576:
      ACCEPT_TOKEN(anon_sym_tail);
      END_STATE();
    case 577:
      ACCEPT_TOKEN(anon_sym_take);
      END_STATE();
    case 578:
      if (lookahead == 'e') ADVANCE(768);
      END_STATE();
    case 579:
      ACCEPT_TOKEN(anon_sym_then);
      END_STATE();
    case 580:
      if (lookahead == 's') ADVANCE(769);
      END_STATE();
    case 581:
      if (lookahead == 'u') ADVANCE(770);
      END_STATE();
    case 582:
      if (lookahead == 'e') ADVANCE(771);
      END_STATE();
    case 583:
      if (lookahead == 'l') ADVANCE(772);
      END_STATE();
    case 584:
      if (lookahead == 's') ADVANCE(773);
      END_STATE();
    case 585:
      if (lookahead == 'r') ADVANCE(774);
      END_STATE();
    case 586:
      if (lookahead == 'r') ADVANCE(775);
      END_STATE();
    case 587:
      if (lookahead == 'c') ADVANCE(776);
      END_STATE();
    case 588:
      if (lookahead == 'r') ADVANCE(777);
      END_STATE();
    case 589:
      if (lookahead == 'l') ADVANCE(778);
      END_STATE();
    case 590:
      if (lookahead == 'd') ADVANCE(779);
      END_STATE();
    case 591:
      if (lookahead == 'a') ADVANCE(780);
      END_STATE();
    case 592:
      if (lookahead == 'c') ADVANCE(781);
      END_STATE();
    case 593:
      if (lookahead == 'i') ADVANCE(782);
      END_STATE();
    case 594:
      if (lookahead == 'a') ADVANCE(783);
      END_STATE();
    case 595:
      if (lookahead == 'l') ADVANCE(784);
      END_STATE();
    case 596:
      ACCEPT_TOKEN(anon_sym_ways);
      END_STATE();
    case 597:
      if (lookahead == '4') ADVANCE(785);
      END_STATE();
    case 598:
      if (lookahead == 's') ADVANCE(786);
      END_STATE();
    case 599:
      ACCEPT_TOKEN(anon_sym_with);
      if (lookahead == 'i') ADVANCE(787);
      END_STATE();
    case 600:
      ACCEPT_TOKEN(anon_sym_above);
      END_STATE();
    case 601:
      if (lookahead == 't') ADVANCE(788);
      END_STATE();
    case 602:
      if (lookahead == 'a') ADVANCE(789);
      END_STATE();
    case 603:
      if (lookahead == 'e') ADVANCE(790);
      END_STATE();
    case 604:
      ACCEPT_TOKEN(anon_sym_added);
      END_STATE();
    case 605:
      ACCEPT_TOKEN(anon_sym_after);
      END_STATE();
    case 606:
      if (lookahead == 's') ADVANCE(791);
      END_STATE();
    case 607:
      if (lookahead == 'a') ADVANCE(792);
      END_STATE();
    case 608:
      ACCEPT_TOKEN(anon_sym_alone);
      END_STATE();
    case 609:
      if (lookahead == 'n') ADVANCE(793);
      END_STATE();
    case 610:
      if (lookahead == 'f') ADVANCE(794);
      END_STATE();
    case 611:
      if (lookahead == 'n') ADVANCE(795);
      END_STATE();
    case 612:
      ACCEPT_TOKEN(anon_sym_apart);
      END_STATE();
    case 613:
      if (lookahead == 'r') ADVANCE(796);
      END_STATE();
    case 614:
      if (lookahead == 'g') ADVANCE(797);
      END_STATE();
    case 615:
      ACCEPT_TOKEN(anon_sym_balun);
      END_STATE();
    case 616:
      if (lookahead == 'i') ADVANCE(798);
      END_STATE();
    case 617:
      if (lookahead == 'i') ADVANCE(799);
      END_STATE();
    case 618:
      ACCEPT_TOKEN(anon_sym_below);
      END_STATE();
    case 619:
      if (lookahead == 'e') ADVANCE(800);
      END_STATE();
    case 620:
      if (lookahead == 'd') ADVANCE(801);
      END_STATE();
    case 621:
      ACCEPT_TOKEN(anon_sym_blank);
      END_STATE();
    case 622:
      if (lookahead == 'i') ADVANCE(802);
      END_STATE();
    case 623:
      ACCEPT_TOKEN(anon_sym_braid);
      END_STATE();
    case 624:
      if (lookahead == 'h') ADVANCE(803);
      END_STATE();
    case 625:
      if (lookahead == 'n') ADVANCE(804);
      END_STATE();
    case 626:
      ACCEPT_TOKEN(anon_sym_cable);
      END_STATE();
    case 627:
      if (lookahead == 'r') ADVANCE(805);
      END_STATE();
    case 628:
      if (lookahead == 'e') ADVANCE(806);
      END_STATE();
    case 629:
      if (lookahead == 'd') ADVANCE(807);
      END_STATE();
    case 630:
      if (lookahead == 'f') ADVANCE(808);
      END_STATE();
    case 631:
      ACCEPT_TOKEN(anon_sym_chain);
      END_STATE();
    case 632:
      if (lookahead == 'l') ADVANCE(809);
      END_STATE();
    case 633:
      ACCEPT_TOKEN(anon_sym_class);
      END_STATE();
    case 634:
      if (lookahead == 'n') ADVANCE(810);
      END_STATE();
    case 635:
      if (lookahead == 't') ADVANCE(811);
      END_STATE();
    case 636:
      if (lookahead == 'c') ADVANCE(812);
      END_STATE();
    case 637:
      if (lookahead == 'd') ADVANCE(813);
      END_STATE();
    case 638:
      if (lookahead == 'c') ADVANCE(814);
      END_STATE();
    case 639:
      if (lookahead == 'r') ADVANCE(815);
      END_STATE();
    case 640:
      if (lookahead == 'c') ADVANCE(816);
      END_STATE();
    case 641:
      if (lookahead == 'e') ADVANCE(817);
      END_STATE();
    case 642:
      if (lookahead == 'a') ADVANCE(818);
      END_STATE();
    case 643:
      ACCEPT_TOKEN(anon_sym_dated);
      END_STATE();
    case 644:
      ACCEPT_TOKEN(anon_sym_datum);
      END_STATE();
    case 645:
      if (lookahead == 'p') ADVANCE(819);
      END_STATE();
    case 646:
      if (lookahead == 'e') ADVANCE(820);
      END_STATE();
    case 647:
      ACCEPT_TOKEN(anon_sym_delay);
      END_STATE();
    case 648:
      if (lookahead == 'e') ADVANCE(821);
      END_STATE();
    case 649:
      if (lookahead == 's') ADVANCE(822);
      END_STATE();
    case 650:
      if (lookahead == 'e') ADVANCE(823);
      END_STATE();
    case 651:
      if (lookahead == 't') ADVANCE(824);
      END_STATE();
    case 652:
      if (lookahead == 'x') ADVANCE(825);
      END_STATE();
    case 653:
      if (lookahead == 't') ADVANCE(826);
      END_STATE();
    case 654:
      if (lookahead == 'a') ADVANCE(827);
      END_STATE();
    case 655:
      if (lookahead == 'n') ADVANCE(828);
      END_STATE();
    case 656:
      if (lookahead == 'e') ADVANCE(829);
      END_STATE();
    case 657:
      ACCEPT_TOKEN(anon_sym_drift);
      END_STATE();
    case 658:
      if (lookahead == 'x') ADVANCE(830);
      END_STATE();
    case 659:
      if (lookahead == 'o') ADVANCE(831);
      END_STATE();
    case 660:
      if (lookahead == 'i') ADVANCE(832);
      END_STATE();
    case 661:
      if (lookahead == 't') ADVANCE(833);
      END_STATE();
    case 662:
      if (lookahead == 'i') ADVANCE(834);
      END_STATE();
    case 663:
      if (lookahead == '9') ADVANCE(835);
      END_STATE();
    case 664:
      if (lookahead == 's') ADVANCE(836);
      END_STATE();
    case 665:
      if (lookahead == 't') ADVANCE(837);
      END_STATE();
    case 666:
      ACCEPT_TOKEN(anon_sym_fails);
      END_STATE();
    case 667:
      if (lookahead == 'y') ADVANCE(838);
      END_STATE();
    case 668:
      ACCEPT_TOKEN(anon_sym_field);
      END_STATE();
    case 669:
      if (lookahead == 'e') ADVANCE(839);
      END_STATE();
    case 670:
      if (lookahead == 'r') ADVANCE(840);
      END_STATE();
    case 671:
      ACCEPT_TOKEN(anon_sym_fixed);
      END_STATE();
    case 672:
      if (lookahead == 'a') ADVANCE(841);
      END_STATE();
    case 673:
      if (lookahead == 'r') ADVANCE(842);
      END_STATE();
    case 674:
      if (lookahead == 's') ADVANCE(843);
      END_STATE();
    case 675:
      if (lookahead == 'e') ADVANCE(844);
      END_STATE();
    case 676:
      if (lookahead == 'a') ADVANCE(845);
      END_STATE();
    case 677:
      if (lookahead == 'd') ADVANCE(846);
      END_STATE();
    case 678:
      ACCEPT_TOKEN(anon_sym_guess);
      END_STATE();
    case 679:
      if (lookahead == 'o') ADVANCE(847);
      if (lookahead == 's') ADVANCE(848);
      if (lookahead == 'u') ADVANCE(849);
      END_STATE();
    case 680:
      if (lookahead == 't') ADVANCE(850);
      END_STATE();
    case 681:
      if (lookahead == 'r') ADVANCE(851);
      END_STATE();
    case 682:
      if (lookahead == 'o') ADVANCE(852);
      END_STATE();
    case 683:
      if (lookahead == 'a') ADVANCE(853);
      END_STATE();
    case 684:
      ACCEPT_TOKEN(anon_sym_inner);
      if (lookahead == '-') ADVANCE(854);
      END_STATE();
    case 685:
      ACCEPT_TOKEN(anon_sym_input);
      END_STATE();
    case 686:
      if (lookahead == 'a') ADVANCE(855);
      END_STATE();
    case 687:
      if (lookahead == 'u') ADVANCE(856);
      END_STATE();
    case 688:
      if (lookahead == 't') ADVANCE(857);
      END_STATE();
    case 689:
      ACCEPT_TOKEN(anon_sym_joins);
      END_STATE();
    case 690:
      if (lookahead == 'r') ADVANCE(858);
      END_STATE();
    case 691:
      if (lookahead == 'd') ADVANCE(859);
      END_STATE();
    case 692:
      if (lookahead == 't') ADVANCE(860);
      END_STATE();
    case 693:
      ACCEPT_TOKEN(anon_sym_keyed);
      END_STATE();
    case 694:
      if (lookahead == 'u') ADVANCE(861);
      END_STATE();
    case 695:
      if (lookahead == 'c') ADVANCE(862);
      END_STATE();
    case 696:
      ACCEPT_TOKEN(anon_sym_limit);
      END_STATE();
    case 697:
      if (lookahead == 'r') ADVANCE(863);
      END_STATE();
    case 698:
      if (lookahead == 't') ADVANCE(864);
      END_STATE();
    case 699:
      if (lookahead == 't') ADVANCE(865);
      END_STATE();
    case 700:
      if (lookahead == 'u') ADVANCE(866);
      END_STATE();
    case 701:
      if (lookahead == 'm') ADVANCE(867);
      END_STATE();
    case 702:
      ACCEPT_TOKEN(anon_sym_meter);
      END_STATE();
    case 703:
      ACCEPT_TOKEN(anon_sym_model);
      END_STATE();
    case 704:
      ACCEPT_TOKEN(anon_sym_nad27);
      END_STATE();
    case 705:
      ACCEPT_TOKEN(anon_sym_nad83);
      END_STATE();
    case 706:
      ACCEPT_TOKEN(anon_sym_noise);
      END_STATE();
    case 707:
      if (lookahead == 'a') ADVANCE(868);
      END_STATE();
    case 708:
      if (lookahead == 'a') ADVANCE(869);
      END_STATE();
    case 709:
      if (lookahead == 't') ADVANCE(870);
      END_STATE();
    case 710:
      ACCEPT_TOKEN(anon_sym_ohm_DASHm);
      END_STATE();
    case 711:
      if (lookahead == 'd') ADVANCE(871);
      END_STATE();
    case 712:
      ACCEPT_TOKEN(anon_sym_outer);
      if (lookahead == '-') ADVANCE(872);
      END_STATE();
    case 713:
      if (lookahead == 't') ADVANCE(873);
      END_STATE();
    case 714:
      if (lookahead == 's') ADVANCE(874);
      END_STATE();
    case 715:
      if (lookahead == 'r') ADVANCE(875);
      END_STATE();
    case 716:
      if (lookahead == 't') ADVANCE(876);
      END_STATE();
    case 717:
      ACCEPT_TOKEN(anon_sym_phase);
      END_STATE();
    case 718:
      ACCEPT_TOKEN(anon_sym_piece);
      END_STATE();
    case 719:
      ACCEPT_TOKEN(anon_sym_place);
      if (lookahead == 's') ADVANCE(877);
      END_STATE();
    case 720:
      if (lookahead == 'i') ADVANCE(878);
      END_STATE();
    case 721:
      ACCEPT_TOKEN(anon_sym_power);
      END_STATE();
    case 722:
      if (lookahead == 'p') ADVANCE(879);
      END_STATE();
    case 723:
      if (lookahead == 'l') ADVANCE(880);
      END_STATE();
    case 724:
      if (lookahead == 'c') ADVANCE(881);
      END_STATE();
    case 725:
      if (lookahead == 'c') ADVANCE(882);
      END_STATE();
    case 726:
      if (lookahead == '-') ADVANCE(883);
      if (lookahead == 'i') ADVANCE(884);
      END_STATE();
    case 727:
      if (lookahead == 's') ADVANCE(885);
      END_STATE();
    case 728:
      ACCEPT_TOKEN(anon_sym_rated);
      END_STATE();
    case 729:
      if (lookahead == 'g') ADVANCE(886);
      END_STATE();
    case 730:
      ACCEPT_TOKEN(anon_sym_ratio);
      END_STATE();
    case 731:
      if (lookahead == 'a') ADVANCE(887);
      END_STATE();
    case 732:
      if (lookahead == 'n') ADVANCE(888);
      END_STATE();
    case 733:
      if (lookahead == 'z') ADVANCE(889);
      END_STATE();
    case 734:
      if (lookahead == 'l') ADVANCE(890);
      END_STATE();
    case 735:
      if (lookahead == 'v') ADVANCE(891);
      END_STATE();
    case 736:
      if (lookahead == 'e') ADVANCE(892);
      END_STATE();
    case 737:
      if (lookahead == 'c') ADVANCE(893);
      END_STATE();
    case 738:
      if (lookahead == 't') ADVANCE(894);
      END_STATE();
    case 739:
      if (lookahead == 't') ADVANCE(895);
      END_STATE();
    case 740:
      if (lookahead == 'e') ADVANCE(896);
      END_STATE();
    case 741:
      if (lookahead == 't') ADVANCE(897);
      END_STATE();
    case 742:
      if (lookahead == 'u') ADVANCE(898);
      END_STATE();
    case 743:
      if (lookahead == 'a') ADVANCE(899);
      END_STATE();
    case 744:
      if (lookahead == 'n') ADVANCE(900);
      END_STATE();
    case 745:
      if (lookahead == 's') ADVANCE(901);
      END_STATE();
    case 746:
      ACCEPT_TOKEN(anon_sym_rules);
      END_STATE();
    case 747:
      ACCEPT_TOKEN(anon_sym_rural);
      END_STATE();
    case 748:
      ACCEPT_TOKEN(anon_sym_scale);
      END_STATE();
    case 749:
      if (lookahead == 't') ADVANCE(902);
      END_STATE();
    case 750:
      if (lookahead == 's') ADVANCE(903);
      END_STATE();
    case 751:
      if (lookahead == 'c') ADVANCE(904);
      END_STATE();
    case 752:
      if (lookahead == 'o') ADVANCE(905);
      END_STATE();
    case 753:
      if (lookahead == 'd') ADVANCE(906);
      END_STATE();
    case 754:
      ACCEPT_TOKEN(anon_sym_sheet);
      END_STATE();
    case 755:
      ACCEPT_TOKEN(anon_sym_short);
      END_STATE();
    case 756:
      ACCEPT_TOKEN(anon_sym_shunt);
      END_STATE();
    case 757:
      ACCEPT_TOKEN(anon_sym_sinad);
      END_STATE();
    case 758:
      ACCEPT_TOKEN(anon_sym_since);
      END_STATE();
    case 759:
      if (lookahead == 'n') ADVANCE(907);
      END_STATE();
    case 760:
      if (lookahead == 'e') ADVANCE(908);
      END_STATE();
    case 761:
      if (lookahead == 'n') ADVANCE(909);
      END_STATE();
    case 762:
      ACCEPT_TOKEN(anon_sym_split);
      END_STATE();
    case 763:
      if (lookahead == 'd') ADVANCE(910);
      END_STATE();
    case 764:
      if (lookahead == 'r') ADVANCE(911);
      END_STATE();
    case 765:
      if (lookahead == 'o') ADVANCE(912);
      END_STATE();
    case 766:
      if (lookahead == 'd') ADVANCE(913);
      END_STATE();
    case 767:
      if (lookahead == 'h') ADVANCE(914);
      END_STATE();
    case 768:
      if (lookahead == 'r') ADVANCE(915);
      END_STATE();
    case 769:
      if (lookahead == 'h') ADVANCE(916);
      END_STATE();
    case 770:
      if (lookahead == 'g') ADVANCE(917);
      END_STATE();
    case 771:
      ACCEPT_TOKEN(anon_sym_title);
      END_STATE();
    case 772:
      ACCEPT_TOKEN(anon_sym_total);
      END_STATE();
    case 773:
      if (lookahead == 'c') ADVANCE(918);
      if (lookahead == 'm') ADVANCE(919);
      END_STATE();
    case 774:
      ACCEPT_TOKEN(anon_sym_tuner);
      END_STATE();
    case 775:
      if (lookahead == 'a') ADVANCE(920);
      END_STATE();
    case 776:
      if (lookahead == 'a') ADVANCE(921);
      END_STATE();
    case 777:
      ACCEPT_TOKEN(anon_sym_under);
      END_STATE();
    case 778:
      ACCEPT_TOKEN(anon_sym_until);
      END_STATE();
    case 779:
      ACCEPT_TOKEN(anon_sym_valid);
      END_STATE();
    case 780:
      if (lookahead == 'n') ADVANCE(922);
      END_STATE();
    case 781:
      if (lookahead == 'i') ADVANCE(923);
      END_STATE();
    case 782:
      if (lookahead == 'c') ADVANCE(924);
      END_STATE();
    case 783:
      if (lookahead == 'g') ADVANCE(925);
      END_STATE();
    case 784:
      if (lookahead == 'e') ADVANCE(926);
      END_STATE();
    case 785:
      ACCEPT_TOKEN(anon_sym_wgs84);
      END_STATE();
    case 786:
      ACCEPT_TOKEN(anon_sym_wires);
      END_STATE();
    case 787:
      if (lookahead == 'n') ADVANCE(927);
      END_STATE();
    case 788:
      ACCEPT_TOKEN(anon_sym_accept);
      END_STATE();
    case 789:
      if (lookahead == 'c') ADVANCE(928);
      END_STATE();
    case 790:
      if (lookahead == 'r') ADVANCE(929);
      END_STATE();
    case 791:
      if (lookahead == 't') ADVANCE(930);
      END_STATE();
    case 792:
      if (lookahead == 't') ADVANCE(931);
      END_STATE();
    case 793:
      if (lookahead == 't') ADVANCE(932);
      END_STATE();
    case 794:
      if (lookahead == 'i') ADVANCE(933);
      END_STATE();
    case 795:
      if (lookahead == 'a') ADVANCE(934);
      END_STATE();
    case 796:
      if (lookahead == 'i') ADVANCE(935);
      END_STATE();
    case 797:
      if (lookahead == 'i') ADVANCE(936);
      END_STATE();
    case 798:
      if (lookahead == 'd') ADVANCE(937);
      END_STATE();
    case 799:
      if (lookahead == 'n') ADVANCE(938);
      END_STATE();
    case 800:
      ACCEPT_TOKEN(anon_sym_beside);
      END_STATE();
    case 801:
      ACCEPT_TOKEN(anon_sym_beyond);
      END_STATE();
    case 802:
      if (lookahead == 'n') ADVANCE(939);
      END_STATE();
    case 803:
      ACCEPT_TOKEN(anon_sym_branch);
      if (lookahead == 'e') ADVANCE(940);
      END_STATE();
    case 804:
      if (lookahead == 'g') ADVANCE(941);
      END_STATE();
    case 805:
      if (lookahead == 'a') ADVANCE(942);
      END_STATE();
    case 806:
      if (lookahead == 'r') ADVANCE(943);
      END_STATE();
    case 807:
      if (lookahead == 'e') ADVANCE(944);
      END_STATE();
    case 808:
      if (lookahead == 'i') ADVANCE(945);
      END_STATE();
    case 809:
      if (lookahead == 'a') ADVANCE(946);
      END_STATE();
    case 810:
      if (lookahead == 'e') ADVANCE(947);
      END_STATE();
    case 811:
      if (lookahead == 'i') ADVANCE(948);
      END_STATE();
    case 812:
      if (lookahead == 't') ADVANCE(949);
      END_STATE();
    case 813:
      if (lookahead == 'e') ADVANCE(950);
      END_STATE();
    case 814:
      if (lookahead == 't') ADVANCE(951);
      END_STATE();
    case 815:
      if (lookahead == 'u') ADVANCE(952);
      END_STATE();
    case 816:
      if (lookahead == 't') ADVANCE(953);
      END_STATE();
    case 817:
      if (lookahead == 'd') ADVANCE(954);
      if (lookahead == 'r') ADVANCE(955);
      END_STATE();
    case 818:
      if (lookahead == 'g') ADVANCE(956);
      END_STATE();
    case 819:
      if (lookahead == 'u') ADVANCE(957);
      END_STATE();
    case 820:
      if (lookahead == 's') ADVANCE(958);
      END_STATE();
    case 821:
      if (lookahead == 'r') ADVANCE(959);
      END_STATE();
    case 822:
      if (lookahead == 'e') ADVANCE(960);
      END_STATE();
    case 823:
      ACCEPT_TOKEN(anon_sym_device);
      END_STATE();
    case 824:
      if (lookahead == 'e') ADVANCE(961);
      END_STATE();
    case 825:
      if (lookahead == 'e') ADVANCE(962);
      END_STATE();
    case 826:
      if (lookahead == 'i') ADVANCE(963);
      END_STATE();
    case 827:
      if (lookahead == 'y') ADVANCE(964);
      END_STATE();
    case 828:
      if (lookahead == 'c') ADVANCE(965);
      END_STATE();
    case 829:
      if (lookahead == 'r') ADVANCE(966);
      END_STATE();
    case 830:
      if (lookahead == 'e') ADVANCE(967);
      END_STATE();
    case 831:
      if (lookahead == 'n') ADVANCE(968);
      END_STATE();
    case 832:
      if (lookahead == 'e') ADVANCE(969);
      END_STATE();
    case 833:
      if (lookahead == 'i') ADVANCE(970);
      END_STATE();
    case 834:
      if (lookahead == 's') ADVANCE(971);
      END_STATE();
    case 835:
      ACCEPT_TOKEN(anon_sym_etrs89);
      END_STATE();
    case 836:
      ACCEPT_TOKEN(anon_sym_excess);
      END_STATE();
    case 837:
      ACCEPT_TOKEN(anon_sym_expect);
      END_STATE();
    case 838:
      ACCEPT_TOKEN(anon_sym_family);
      END_STATE();
    case 839:
      ACCEPT_TOKEN(anon_sym_figure);
      END_STATE();
    case 840:
      ACCEPT_TOKEN(anon_sym_filter);
      END_STATE();
    case 841:
      if (lookahead == 'c') ADVANCE(972);
      END_STATE();
    case 842:
      if (lookahead == 'd') ADVANCE(973);
      END_STATE();
    case 843:
      if (lookahead == 'p') ADVANCE(974);
      END_STATE();
    case 844:
      if (lookahead == 'n') ADVANCE(975);
      END_STATE();
    case 845:
      if (lookahead == 't') ADVANCE(976);
      END_STATE();
    case 846:
      ACCEPT_TOKEN(anon_sym_ground);
      END_STATE();
    case 847:
      if (lookahead == 'p') ADVANCE(977);
      END_STATE();
    case 848:
      if (lookahead == 'u') ADVANCE(978);
      END_STATE();
    case 849:
      if (lookahead == 'r') ADVANCE(979);
      END_STATE();
    case 850:
      ACCEPT_TOKEN(anon_sym_height);
      if (lookahead == '-') ADVANCE(980);
      END_STATE();
    case 851:
      ACCEPT_TOKEN(anon_sym_holder);
      END_STATE();
    case 852:
      if (lookahead == 'n') ADVANCE(981);
      END_STATE();
    case 853:
      if (lookahead == 'n') ADVANCE(982);
      END_STATE();
    case 854:
      if (lookahead == 'r') ADVANCE(983);
      END_STATE();
    case 855:
      if (lookahead == 'd') ADVANCE(984);
      END_STATE();
    case 856:
      if (lookahead == 'm') ADVANCE(985);
      END_STATE();
    case 857:
      if (lookahead == 'i') ADVANCE(986);
      if (lookahead == 'o') ADVANCE(987);
      END_STATE();
    case 858:
      ACCEPT_TOKEN(anon_sym_jumper);
      END_STATE();
    case 859:
      if (lookahead == 'i') ADVANCE(988);
      END_STATE();
    case 860:
      if (lookahead == 'o') ADVANCE(989);
      END_STATE();
    case 861:
      if (lookahead == 'd') ADVANCE(990);
      END_STATE();
    case 862:
      if (lookahead == 'e') ADVANCE(991);
      END_STATE();
    case 863:
      if (lookahead == 'i') ADVANCE(992);
      END_STATE();
    case 864:
      if (lookahead == 'u') ADVANCE(993);
      END_STATE();
    case 865:
      if (lookahead == 'a') ADVANCE(994);
      END_STATE();
    case 866:
      if (lookahead == 'm') ADVANCE(995);
      END_STATE();
    case 867:
      ACCEPT_TOKEN(anon_sym_medium);
      END_STATE();
    case 868:
      if (lookahead == 'l') ADVANCE(996);
      END_STATE();
    case 869:
      if (lookahead == 't') ADVANCE(997);
      END_STATE();
    case 870:
      ACCEPT_TOKEN(anon_sym_offset);
      END_STATE();
    case 871:
      if (lookahead == 'g') ADVANCE(998);
      END_STATE();
    case 872:
      if (lookahead == 'r') ADVANCE(999);
      END_STATE();
    case 873:
      ACCEPT_TOKEN(anon_sym_output);
      END_STATE();
    case 874:
      ACCEPT_TOKEN(anon_sym_passes);
      END_STATE();
    case 875:
      if (lookahead == 'n') ADVANCE(1000);
      END_STATE();
    case 876:
      if (lookahead == 't') ADVANCE(1001);
      END_STATE();
    case 877:
      ACCEPT_TOKEN(anon_sym_places);
      END_STATE();
    case 878:
      if (lookahead == 'o') ADVANCE(1002);
      END_STATE();
    case 879:
      if (lookahead == 'l') ADVANCE(1003);
      END_STATE();
    case 880:
      if (lookahead == 'e') ADVANCE(1004);
      END_STATE();
    case 881:
      if (lookahead == 't') ADVANCE(1005);
      END_STATE();
    case 882:
      ACCEPT_TOKEN(anon_sym_public);
      END_STATE();
    case 883:
      if (lookahead == 'r') ADVANCE(1006);
      END_STATE();
    case 884:
      if (lookahead == 'n') ADVANCE(1007);
      END_STATE();
    case 885:
      ACCEPT_TOKEN(anon_sym_radius);
      END_STATE();
    case 886:
      ACCEPT_TOKEN(anon_sym_rating);
      END_STATE();
    case 887:
      if (lookahead == 'n') ADVANCE(1008);
      END_STATE();
    case 888:
      if (lookahead == 'g') ADVANCE(1009);
      END_STATE();
    case 889:
      if (lookahead == 'e') ADVANCE(1010);
      END_STATE();
    case 890:
      if (lookahead == 'e') ADVANCE(1011);
      END_STATE();
    case 891:
      if (lookahead == 'e') ADVANCE(1012);
      END_STATE();
    case 892:
      if (lookahead == 'n') ADVANCE(1013);
      END_STATE();
    case 893:
      if (lookahead == 't') ADVANCE(1014);
      END_STATE();
    case 894:
      if (lookahead == 's') ADVANCE(1015);
      END_STATE();
    case 895:
      if (lookahead == 'a') ADVANCE(1016);
      END_STATE();
    case 896:
      if (lookahead == 'n') ADVANCE(1017);
      END_STATE();
    case 897:
      if (lookahead == 'i') ADVANCE(1018);
      END_STATE();
    case 898:
      if (lookahead == 't') ADVANCE(1019);
      END_STATE();
    case 899:
      if (lookahead == 'n') ADVANCE(1020);
      END_STATE();
    case 900:
      if (lookahead == '-') ADVANCE(1021);
      END_STATE();
    case 901:
      if (lookahead == 'e') ADVANCE(1022);
      END_STATE();
    case 902:
      if (lookahead == 'i') ADVANCE(1023);
      END_STATE();
    case 903:
      ACCEPT_TOKEN(anon_sym_series);
      END_STATE();
    case 904:
      if (lookahead == 'e') ADVANCE(1024);
      END_STATE();
    case 905:
      if (lookahead == 'n') ADVANCE(1025);
      END_STATE();
    case 906:
      ACCEPT_TOKEN(anon_sym_shared);
      END_STATE();
    case 907:
      if (lookahead == 'o') ADVANCE(1026);
      END_STATE();
    case 908:
      ACCEPT_TOKEN(anon_sym_source);
      END_STATE();
    case 909:
      if (lookahead == 'g') ADVANCE(1027);
      END_STATE();
    case 910:
      ACCEPT_TOKEN(anon_sym_spread);
      END_STATE();
    case 911:
      if (lookahead == 'o') ADVANCE(1028);
      END_STATE();
    case 912:
      if (lookahead == 'n') ADVANCE(1029);
      END_STATE();
    case 913:
      ACCEPT_TOKEN(anon_sym_strand);
      if (lookahead == '-') ADVANCE(1030);
      END_STATE();
    case 914:
      ACCEPT_TOKEN(anon_sym_switch);
      END_STATE();
    case 915:
      if (lookahead == 'a') ADVANCE(1031);
      END_STATE();
    case 916:
      if (lookahead == 'o') ADVANCE(1032);
      END_STATE();
    case 917:
      if (lookahead == 'h') ADVANCE(1033);
      END_STATE();
    case 918:
      if (lookahead == 'e') ADVANCE(1034);
      END_STATE();
    case 919:
      if (lookahead == 'i') ADVANCE(1035);
      END_STATE();
    case 920:
      if (lookahead == 'y') ADVANCE(1036);
      END_STATE();
    case 921:
      if (lookahead == 'l') ADVANCE(1037);
      END_STATE();
    case 922:
      if (lookahead == 't') ADVANCE(1038);
      END_STATE();
    case 923:
      if (lookahead == 't') ADVANCE(1039);
      END_STATE();
    case 924:
      if (lookahead == 'a') ADVANCE(1040);
      END_STATE();
    case 925:
      if (lookahead == 'e') ADVANCE(1041);
      END_STATE();
    case 926:
      if (lookahead == 'n') ADVANCE(1042);
      END_STATE();
    case 927:
      ACCEPT_TOKEN(anon_sym_within);
      END_STATE();
    case 928:
      if (lookahead == 'y') ADVANCE(1043);
      END_STATE();
    case 929:
      ACCEPT_TOKEN(anon_sym_adapter);
      END_STATE();
    case 930:
      ACCEPT_TOKEN(anon_sym_against);
      END_STATE();
    case 931:
      if (lookahead == 'e') ADVANCE(1044);
      END_STATE();
    case 932:
      ACCEPT_TOKEN(anon_sym_ambient);
      END_STATE();
    case 933:
      if (lookahead == 'e') ADVANCE(1045);
      END_STATE();
    case 934:
      ACCEPT_TOKEN(anon_sym_antenna);
      END_STATE();
    case 935:
      if (lookahead == 't') ADVANCE(1046);
      END_STATE();
    case 936:
      if (lookahead == 'n') ADVANCE(1047);
      END_STATE();
    case 937:
      if (lookahead == 't') ADVANCE(1048);
      END_STATE();
    case 938:
      if (lookahead == 'e') ADVANCE(1049);
      END_STATE();
    case 939:
      if (lookahead == 'g') ADVANCE(1050);
      END_STATE();
    case 940:
      if (lookahead == 's') ADVANCE(1051);
      END_STATE();
    case 941:
      if (lookahead == 't') ADVANCE(1052);
      END_STATE();
    case 942:
      if (lookahead == 't') ADVANCE(1053);
      END_STATE();
    case 943:
      ACCEPT_TOKEN(anon_sym_carrier);
      END_STATE();
    case 944:
      ACCEPT_TOKEN(anon_sym_cascade);
      END_STATE();
    case 945:
      if (lookahead == 'c') ADVANCE(1054);
      END_STATE();
    case 946:
      if (lookahead == 't') ADVANCE(1055);
      END_STATE();
    case 947:
      if (lookahead == 'r') ADVANCE(1056);
      END_STATE();
    case 948:
      if (lookahead == 'o') ADVANCE(1057);
      END_STATE();
    case 949:
      if (lookahead == 'o') ADVANCE(1058);
      END_STATE();
    case 950:
      if (lookahead == 'n') ADVANCE(1059);
      END_STATE();
    case 951:
      if (lookahead == 'o') ADVANCE(1060);
      END_STATE();
    case 952:
      if (lookahead == 'c') ADVANCE(1061);
      END_STATE();
    case 953:
      if (lookahead == 'e') ADVANCE(1062);
      END_STATE();
    case 954:
      ACCEPT_TOKEN(anon_sym_coupled);
      END_STATE();
    case 955:
      ACCEPT_TOKEN(anon_sym_coupler);
      END_STATE();
    case 956:
      if (lookahead == 'e') ADVANCE(1063);
      END_STATE();
    case 957:
      if (lookahead == 't') ADVANCE(1064);
      END_STATE();
    case 958:
      ACCEPT_TOKEN(anon_sym_degrees);
      END_STATE();
    case 959:
      if (lookahead == 'e') ADVANCE(1065);
      END_STATE();
    case 960:
      ACCEPT_TOKEN(anon_sym_desense);
      END_STATE();
    case 961:
      if (lookahead == 'r') ADVANCE(1066);
      END_STATE();
    case 962:
      if (lookahead == 'r') ADVANCE(1067);
      END_STATE();
    case 963:
      if (lookahead == 'v') ADVANCE(1068);
      END_STATE();
    case 964:
      if (lookahead == 'e') ADVANCE(1069);
      END_STATE();
    case 965:
      if (lookahead == 'e') ADVANCE(1070);
      END_STATE();
    case 966:
      ACCEPT_TOKEN(anon_sym_divider);
      END_STATE();
    case 967:
      if (lookahead == 'r') ADVANCE(1071);
      END_STATE();
    case 968:
      ACCEPT_TOKEN(anon_sym_edition);
      END_STATE();
    case 969:
      if (lookahead == 'n') ADVANCE(1072);
      END_STATE();
    case 970:
      if (lookahead == 'o') ADVANCE(1073);
      END_STATE();
    case 971:
      if (lookahead == 'e') ADVANCE(1074);
      END_STATE();
    case 972:
      if (lookahead == 'k') ADVANCE(1075);
      END_STATE();
    case 973:
      ACCEPT_TOKEN(anon_sym_forward);
      END_STATE();
    case 974:
      if (lookahead == 'a') ADVANCE(1076);
      END_STATE();
    case 975:
      if (lookahead == 'c') ADVANCE(1077);
      END_STATE();
    case 976:
      if (lookahead == 'o') ADVANCE(1078);
      END_STATE();
    case 977:
      if (lookahead == 'e') ADVANCE(1079);
      END_STATE();
    case 978:
      if (lookahead == 'b') ADVANCE(1080);
      END_STATE();
    case 979:
      if (lookahead == 'b') ADVANCE(1081);
      END_STATE();
    case 980:
      if (lookahead == 'a') ADVANCE(1082);
      END_STATE();
    case 981:
      if (lookahead == 't') ADVANCE(1083);
      END_STATE();
    case 982:
      if (lookahead == 'c') ADVANCE(1084);
      END_STATE();
    case 983:
      if (lookahead == 'e') ADVANCE(1085);
      END_STATE();
    case 984:
      ACCEPT_TOKEN(anon_sym_instead);
      END_STATE();
    case 985:
      if (lookahead == 'e') ADVANCE(1086);
      END_STATE();
    case 986:
      if (lookahead == 'o') ADVANCE(1087);
      END_STATE();
    case 987:
      if (lookahead == 'r') ADVANCE(1088);
      END_STATE();
    case 988:
      if (lookahead == 'c') ADVANCE(1089);
      END_STATE();
    case 989:
      if (lookahead == 'r') ADVANCE(1090);
      END_STATE();
    case 990:
      if (lookahead == 'e') ADVANCE(1091);
      END_STATE();
    case 991:
      ACCEPT_TOKEN(anon_sym_licence);
      END_STATE();
    case 992:
      if (lookahead == 't') ADVANCE(1092);
      END_STATE();
    case 993:
      if (lookahead == 'd') ADVANCE(1093);
      END_STATE();
    case 994:
      if (lookahead == 'n') ADVANCE(1094);
      END_STATE();
    case 995:
      ACCEPT_TOKEN(anon_sym_maximum);
      END_STATE();
    case 996:
      ACCEPT_TOKEN(anon_sym_nominal);
      END_STATE();
    case 997:
      if (lookahead == 'i') ADVANCE(1095);
      END_STATE();
    case 998:
      if (lookahead == 'e') ADVANCE(1096);
      END_STATE();
    case 999:
      if (lookahead == 'e') ADVANCE(1097);
      END_STATE();
    case 1000:
      ACCEPT_TOKEN(anon_sym_pattern);
      END_STATE();
    case 1001:
      if (lookahead == 'i') ADVANCE(1098);
      END_STATE();
    case 1002:
      if (lookahead == 'n') ADVANCE(1099);
      END_STATE();
    case 1003:
      if (lookahead == 'i') ADVANCE(1100);
      END_STATE();
    case 1004:
      ACCEPT_TOKEN(anon_sym_profile);
      END_STATE();
    case 1005:
      if (lookahead == 'o') ADVANCE(1101);
      END_STATE();
    case 1006:
      if (lookahead == 'u') ADVANCE(1102);
      END_STATE();
    case 1007:
      if (lookahead == 'g') ADVANCE(1103);
      END_STATE();
    case 1008:
      if (lookahead == 'c') ADVANCE(1104);
      END_STATE();
    case 1009:
      ACCEPT_TOKEN(anon_sym_reading);
      if (lookahead == 's') ADVANCE(1105);
      END_STATE();
    case 1010:
      if (lookahead == 'd') ADVANCE(1106);
      END_STATE();
    case 1011:
      if (lookahead == 'd') ADVANCE(1107);
      END_STATE();
    case 1012:
      ACCEPT_TOKEN(anon_sym_receive);
      if (lookahead == '-') ADVANCE(1108);
      if (lookahead == 'r') ADVANCE(1109);
      END_STATE();
    case 1013:
      if (lookahead == 'c') ADVANCE(1110);
      END_STATE();
    case 1014:
      if (lookahead == 'e') ADVANCE(1111);
      if (lookahead == 'i') ADVANCE(1112);
      END_STATE();
    case 1015:
      ACCEPT_TOKEN(anon_sym_rejects);
      END_STATE();
    case 1016:
      if (lookahead == 'b') ADVANCE(1113);
      END_STATE();
    case 1017:
      if (lookahead == 't') ADVANCE(1114);
      END_STATE();
    case 1018:
      if (lookahead == 'v') ADVANCE(1115);
      END_STATE();
    case 1019:
      if (lookahead == 'i') ADVANCE(1116);
      END_STATE();
    case 1020:
      if (lookahead == 'c') ADVANCE(1117);
      END_STATE();
    case 1021:
      if (lookahead == 'l') ADVANCE(1118);
      END_STATE();
    case 1022:
      if (lookahead == 'd') ADVANCE(1119);
      END_STATE();
    case 1023:
      if (lookahead == 'v') ADVANCE(1120);
      END_STATE();
    case 1024:
      ACCEPT_TOKEN(anon_sym_service);
      END_STATE();
    case 1025:
      ACCEPT_TOKEN(anon_sym_session);
      END_STATE();
    case 1026:
      if (lookahead == 'i') ADVANCE(1121);
      END_STATE();
    case 1027:
      ACCEPT_TOKEN(anon_sym_spacing);
      END_STATE();
    case 1028:
      if (lookahead == 'c') ADVANCE(1122);
      END_STATE();
    case 1029:
      ACCEPT_TOKEN(anon_sym_station);
      END_STATE();
    case 1030:
      if (lookahead == 'd') ADVANCE(1123);
      END_STATE();
    case 1031:
      if (lookahead == 't') ADVANCE(1124);
      END_STATE();
    case 1032:
      if (lookahead == 'l') ADVANCE(1125);
      END_STATE();
    case 1033:
      ACCEPT_TOKEN(anon_sym_through);
      END_STATE();
    case 1034:
      if (lookahead == 'i') ADVANCE(1126);
      END_STATE();
    case 1035:
      if (lookahead == 't') ADVANCE(1127);
      END_STATE();
    case 1036:
      ACCEPT_TOKEN(anon_sym_two_DASHray);
      END_STATE();
    case 1037:
      ACCEPT_TOKEN(anon_sym_typical);
      END_STATE();
    case 1038:
      ACCEPT_TOKEN(anon_sym_variant);
      END_STATE();
    case 1039:
      if (lookahead == 'y') ADVANCE(1128);
      END_STATE();
    case 1040:
      if (lookahead == 'l') ADVANCE(1129);
      END_STATE();
    case 1041:
      ACCEPT_TOKEN(anon_sym_voltage);
      END_STATE();
    case 1042:
      if (lookahead == 'g') ADVANCE(1130);
      END_STATE();
    case 1043:
      ACCEPT_TOKEN(anon_sym_accuracy);
      END_STATE();
    case 1044:
      if (lookahead == 'd') ADVANCE(1131);
      END_STATE();
    case 1045:
      if (lookahead == 'r') ADVANCE(1132);
      END_STATE();
    case 1046:
      if (lookahead == 'y') ADVANCE(1133);
      END_STATE();
    case 1047:
      if (lookahead == 'g') ADVANCE(1134);
      END_STATE();
    case 1048:
      if (lookahead == 'h') ADVANCE(1135);
      END_STATE();
    case 1049:
      ACCEPT_TOKEN(anon_sym_baseline);
      END_STATE();
    case 1050:
      ACCEPT_TOKEN(anon_sym_blocking);
      END_STATE();
    case 1051:
      ACCEPT_TOKEN(anon_sym_branches);
      END_STATE();
    case 1052:
      if (lookahead == 'o') ADVANCE(1136);
      END_STATE();
    case 1053:
      if (lookahead == 'e') ADVANCE(1137);
      END_STATE();
    case 1054:
      if (lookahead == 'a') ADVANCE(1138);
      END_STATE();
    case 1055:
      if (lookahead == 'o') ADVANCE(1139);
      END_STATE();
    case 1056:
      ACCEPT_TOKEN(anon_sym_combiner);
      END_STATE();
    case 1057:
      if (lookahead == 'n') ADVANCE(1140);
      END_STATE();
    case 1058:
      if (lookahead == 'r') ADVANCE(1141);
      END_STATE();
    case 1059:
      if (lookahead == 'c') ADVANCE(1142);
      END_STATE();
    case 1060:
      if (lookahead == 'r') ADVANCE(1143);
      END_STATE();
    case 1061:
      if (lookahead == 't') ADVANCE(1144);
      END_STATE();
    case 1062:
      if (lookahead == 'd') ADVANCE(1145);
      END_STATE();
    case 1063:
      ACCEPT_TOKEN(anon_sym_coverage);
      END_STATE();
    case 1064:
      ACCEPT_TOKEN(anon_sym_dc_DASHinput);
      END_STATE();
    case 1065:
      if (lookahead == 'd') ADVANCE(1146);
      END_STATE();
    case 1066:
      ACCEPT_TOKEN(anon_sym_diameter);
      END_STATE();
    case 1067:
      ACCEPT_TOKEN(anon_sym_diplexer);
      END_STATE();
    case 1068:
      if (lookahead == 'i') ADVANCE(1147);
      END_STATE();
    case 1069:
      if (lookahead == 'd') ADVANCE(1148);
      END_STATE();
    case 1070:
      ACCEPT_TOKEN(anon_sym_distance);
      END_STATE();
    case 1071:
      ACCEPT_TOKEN(anon_sym_duplexer);
      END_STATE();
    case 1072:
      if (lookahead == 'c') ADVANCE(1149);
      END_STATE();
    case 1073:
      if (lookahead == 'n') ADVANCE(1150);
      END_STATE();
    case 1074:
      ACCEPT_TOKEN(anon_sym_equalise);
      END_STATE();
    case 1075:
      ACCEPT_TOKEN(anon_sym_foldback);
      END_STATE();
    case 1076:
      if (lookahead == 'c') ADVANCE(1151);
      END_STATE();
    case 1077:
      if (lookahead == 'y') ADVANCE(1152);
      END_STATE();
    case 1078:
      if (lookahead == 'r') ADVANCE(1153);
      END_STATE();
    case 1079:
      if (lookahead == 'n') ADVANCE(1154);
      END_STATE();
    case 1080:
      if (lookahead == 'u') ADVANCE(1155);
      END_STATE();
    case 1081:
      if (lookahead == 'a') ADVANCE(1156);
      END_STATE();
    case 1082:
      if (lookahead == 'm') ADVANCE(1157);
      END_STATE();
    case 1083:
      if (lookahead == 'a') ADVANCE(1158);
      END_STATE();
    case 1084:
      if (lookahead == 'e') ADVANCE(1159);
      END_STATE();
    case 1085:
      if (lookahead == 's') ADVANCE(1160);
      END_STATE();
    case 1086:
      if (lookahead == 'n') ADVANCE(1161);
      END_STATE();
    case 1087:
      if (lookahead == 'n') ADVANCE(1162);
      END_STATE();
    case 1088:
      ACCEPT_TOKEN(anon_sym_isolator);
      END_STATE();
    case 1089:
      if (lookahead == 't') ADVANCE(1163);
      END_STATE();
    case 1090:
      ACCEPT_TOKEN(anon_sym_k_DASHfactor);
      END_STATE();
    case 1091:
      ACCEPT_TOKEN(anon_sym_latitude);
      END_STATE();
    case 1092:
      if (lookahead == 'y') ADVANCE(1164);
      END_STATE();
    case 1093:
      if (lookahead == 'e') ADVANCE(1165);
      END_STATE();
    case 1094:
      if (lookahead == 'g') ADVANCE(1166);
      END_STATE();
    case 1095:
      if (lookahead == 'o') ADVANCE(1167);
      END_STATE();
    case 1096:
      ACCEPT_TOKEN(anon_sym_one_DASHedge);
      END_STATE();
    case 1097:
      if (lookahead == 's') ADVANCE(1168);
      END_STATE();
    case 1098:
      if (lookahead == 'v') ADVANCE(1169);
      END_STATE();
    case 1099:
      ACCEPT_TOKEN(anon_sym_position);
      END_STATE();
    case 1100:
      if (lookahead == 'f') ADVANCE(1170);
      END_STATE();
    case 1101:
      if (lookahead == 'r') ADVANCE(1171);
      END_STATE();
    case 1102:
      if (lookahead == 'r') ADVANCE(1172);
      END_STATE();
    case 1103:
      ACCEPT_TOKEN(anon_sym_quieting);
      END_STATE();
    case 1104:
      if (lookahead == 'e') ADVANCE(1173);
      END_STATE();
    case 1105:
      ACCEPT_TOKEN(anon_sym_readings);
      END_STATE();
    case 1106:
      ACCEPT_TOKEN(anon_sym_realized);
      END_STATE();
    case 1107:
      ACCEPT_TOKEN(anon_sym_recalled);
      END_STATE();
    case 1108:
      if (lookahead == 'f') ADVANCE(1174);
      if (lookahead == 'l') ADVANCE(1175);
      END_STATE();
    case 1109:
      ACCEPT_TOKEN(anon_sym_receiver);
      END_STATE();
    case 1110:
      if (lookahead == 'e') ADVANCE(1176);
      END_STATE();
    case 1111:
      if (lookahead == 'd') ADVANCE(1177);
      END_STATE();
    case 1112:
      if (lookahead == 'o') ADVANCE(1178);
      END_STATE();
    case 1113:
      if (lookahead == 'i') ADVANCE(1179);
      END_STATE();
    case 1114:
      if (lookahead == 'i') ADVANCE(1180);
      END_STATE();
    case 1115:
      if (lookahead == 'i') ADVANCE(1181);
      END_STATE();
    case 1116:
      if (lookahead == 'o') ADVANCE(1182);
      END_STATE();
    case 1117:
      if (lookahead == 'e') ADVANCE(1183);
      END_STATE();
    case 1118:
      if (lookahead == 'o') ADVANCE(1184);
      END_STATE();
    case 1119:
      ACCEPT_TOKEN(anon_sym_reversed);
      END_STATE();
    case 1120:
      if (lookahead == 'i') ADVANCE(1185);
      END_STATE();
    case 1121:
      if (lookahead == 's') ADVANCE(1186);
      END_STATE();
    case 1122:
      if (lookahead == 'e') ADVANCE(1187);
      END_STATE();
    case 1123:
      if (lookahead == 'i') ADVANCE(1188);
      END_STATE();
    case 1124:
      if (lookahead == 'u') ADVANCE(1189);
      END_STATE();
    case 1125:
      if (lookahead == 'd') ADVANCE(1190);
      END_STATE();
    case 1126:
      if (lookahead == 'v') ADVANCE(1191);
      END_STATE();
    case 1127:
      ACCEPT_TOKEN(anon_sym_transmit);
      if (lookahead == '-') ADVANCE(1192);
      if (lookahead == 't') ADVANCE(1193);
      END_STATE();
    case 1128:
      ACCEPT_TOKEN(anon_sym_velocity);
      END_STATE();
    case 1129:
      ACCEPT_TOKEN(anon_sym_vertical);
      END_STATE();
    case 1130:
      if (lookahead == 't') ADVANCE(1194);
      END_STATE();
    case 1131:
      ACCEPT_TOKEN(anon_sym_allocated);
      END_STATE();
    case 1132:
      ACCEPT_TOKEN(anon_sym_amplifier);
      END_STATE();
    case 1133:
      ACCEPT_TOKEN(anon_sym_authority);
      END_STATE();
    case 1134:
      ACCEPT_TOKEN(anon_sym_averaging);
      END_STATE();
    case 1135:
      ACCEPT_TOKEN(anon_sym_bandwidth);
      END_STATE();
    case 1136:
      if (lookahead == 'n') ADVANCE(1195);
      END_STATE();
    case 1137:
      if (lookahead == 'd') ADVANCE(1196);
      END_STATE();
    case 1138:
      if (lookahead == 't') ADVANCE(1197);
      END_STATE();
    case 1139:
      if (lookahead == 'r') ADVANCE(1198);
      END_STATE();
    case 1140:
      ACCEPT_TOKEN(anon_sym_condition);
      END_STATE();
    case 1141:
      ACCEPT_TOKEN(anon_sym_conductor);
      END_STATE();
    case 1142:
      if (lookahead == 'e') ADVANCE(1199);
      END_STATE();
    case 1143:
      ACCEPT_TOKEN(anon_sym_connector);
      END_STATE();
    case 1144:
      if (lookahead == 'i') ADVANCE(1200);
      END_STATE();
    case 1145:
      ACCEPT_TOKEN(anon_sym_corrected);
      END_STATE();
    case 1146:
      ACCEPT_TOKEN(anon_sym_delivered);
      END_STATE();
    case 1147:
      if (lookahead == 't') ADVANCE(1201);
      END_STATE();
    case 1148:
      ACCEPT_TOKEN(anon_sym_displayed);
      END_STATE();
    case 1149:
      if (lookahead == 'y') ADVANCE(1202);
      END_STATE();
    case 1150:
      ACCEPT_TOKEN(anon_sym_elevation);
      END_STATE();
    case 1151:
      if (lookahead == 'e') ADVANCE(1203);
      END_STATE();
    case 1152:
      ACCEPT_TOKEN(anon_sym_frequency);
      END_STATE();
    case 1153:
      ACCEPT_TOKEN(anon_sym_generator);
      END_STATE();
    case 1154:
      ACCEPT_TOKEN(anon_sym_hata_DASHopen);
      END_STATE();
    case 1155:
      if (lookahead == 'r') ADVANCE(1204);
      END_STATE();
    case 1156:
      if (lookahead == 'n') ADVANCE(1205);
      END_STATE();
    case 1157:
      if (lookahead == 's') ADVANCE(1206);
      END_STATE();
    case 1158:
      if (lookahead == 'l') ADVANCE(1207);
      END_STATE();
    case 1159:
      ACCEPT_TOKEN(anon_sym_impedance);
      END_STATE();
    case 1160:
      if (lookahead == 'i') ADVANCE(1208);
      END_STATE();
    case 1161:
      if (lookahead == 't') ADVANCE(1209);
      END_STATE();
    case 1162:
      ACCEPT_TOKEN(anon_sym_isolation);
      END_STATE();
    case 1163:
      if (lookahead == 'i') ADVANCE(1210);
      END_STATE();
    case 1164:
      ACCEPT_TOKEN(anon_sym_linearity);
      END_STATE();
    case 1165:
      ACCEPT_TOKEN(anon_sym_longitude);
      END_STATE();
    case 1166:
      if (lookahead == 'e') ADVANCE(1211);
      END_STATE();
    case 1167:
      if (lookahead == 'n') ADVANCE(1212);
      END_STATE();
    case 1168:
      if (lookahead == 'i') ADVANCE(1213);
      END_STATE();
    case 1169:
      if (lookahead == 'i') ADVANCE(1214);
      END_STATE();
    case 1170:
      if (lookahead == 'i') ADVANCE(1215);
      END_STATE();
    case 1171:
      ACCEPT_TOKEN(anon_sym_protector);
      END_STATE();
    case 1172:
      if (lookahead == 'a') ADVANCE(1216);
      END_STATE();
    case 1173:
      ACCEPT_TOKEN(anon_sym_reactance);
      END_STATE();
    case 1174:
      if (lookahead == 'r') ADVANCE(1217);
      END_STATE();
    case 1175:
      if (lookahead == 'o') ADVANCE(1218);
      END_STATE();
    case 1176:
      ACCEPT_TOKEN(anon_sym_reference);
      END_STATE();
    case 1177:
      ACCEPT_TOKEN(anon_sym_reflected);
      END_STATE();
    case 1178:
      if (lookahead == 'n') ADVANCE(1219);
      END_STATE();
    case 1179:
      if (lookahead == 'l') ADVANCE(1220);
      END_STATE();
    case 1180:
      if (lookahead == 'a') ADVANCE(1221);
      END_STATE();
    case 1181:
      if (lookahead == 't') ADVANCE(1222);
      END_STATE();
    case 1182:
      if (lookahead == 'n') ADVANCE(1223);
      END_STATE();
    case 1183:
      ACCEPT_TOKEN(anon_sym_resonance);
      END_STATE();
    case 1184:
      if (lookahead == 's') ADVANCE(1224);
      END_STATE();
    case 1185:
      if (lookahead == 't') ADVANCE(1225);
      END_STATE();
    case 1186:
      if (lookahead == 'e') ADVANCE(1226);
      END_STATE();
    case 1187:
      if (lookahead == 's') ADVANCE(1227);
      END_STATE();
    case 1188:
      if (lookahead == 'a') ADVANCE(1228);
      END_STATE();
    case 1189:
      if (lookahead == 'r') ADVANCE(1229);
      END_STATE();
    case 1190:
      ACCEPT_TOKEN(anon_sym_threshold);
      END_STATE();
    case 1191:
      if (lookahead == 'e') ADVANCE(1230);
      END_STATE();
    case 1192:
      if (lookahead == 'f') ADVANCE(1231);
      END_STATE();
    case 1193:
      if (lookahead == 'e') ADVANCE(1232);
      END_STATE();
    case 1194:
      if (lookahead == 'h') ADVANCE(1233);
      END_STATE();
    case 1195:
      ACCEPT_TOKEN(anon_sym_bullington);
      END_STATE();
    case 1196:
      ACCEPT_TOKEN(anon_sym_calibrated);
      END_STATE();
    case 1197:
      if (lookahead == 'e') ADVANCE(1234);
      END_STATE();
    case 1198:
      ACCEPT_TOKEN(anon_sym_circulator);
      END_STATE();
    case 1199:
      ACCEPT_TOKEN(anon_sym_confidence);
      END_STATE();
    case 1200:
      if (lookahead == 'o') ADVANCE(1235);
      END_STATE();
    case 1201:
      if (lookahead == 'y') ADVANCE(1236);
      END_STATE();
    case 1202:
      ACCEPT_TOKEN(anon_sym_efficiency);
      END_STATE();
    case 1203:
      ACCEPT_TOKEN(anon_sym_free_DASHspace);
      END_STATE();
    case 1204:
      if (lookahead == 'b') ADVANCE(1237);
      END_STATE();
    case 1205:
      ACCEPT_TOKEN(anon_sym_hata_DASHurban);
      END_STATE();
    case 1206:
      if (lookahead == 'l') ADVANCE(1238);
      END_STATE();
    case 1207:
      ACCEPT_TOKEN(anon_sym_horizontal);
      END_STATE();
    case 1208:
      if (lookahead == 's') ADVANCE(1239);
      END_STATE();
    case 1209:
      ACCEPT_TOKEN(anon_sym_instrument);
      END_STATE();
    case 1210:
      if (lookahead == 'o') ADVANCE(1240);
      END_STATE();
    case 1211:
      if (lookahead == 'n') ADVANCE(1241);
      END_STATE();
    case 1212:
      if (lookahead == 'a') ADVANCE(1242);
      END_STATE();
    case 1213:
      if (lookahead == 's') ADVANCE(1243);
      END_STATE();
    case 1214:
      if (lookahead == 't') ADVANCE(1244);
      END_STATE();
    case 1215:
      if (lookahead == 'e') ADVANCE(1245);
      END_STATE();
    case 1216:
      if (lookahead == 'l') ADVANCE(1246);
      END_STATE();
    case 1217:
      if (lookahead == 'e') ADVANCE(1247);
      END_STATE();
    case 1218:
      if (lookahead == 's') ADVANCE(1248);
      END_STATE();
    case 1219:
      ACCEPT_TOKEN(anon_sym_reflection);
      END_STATE();
    case 1220:
      if (lookahead == 'i') ADVANCE(1249);
      END_STATE();
    case 1221:
      if (lookahead == 'l') ADVANCE(1250);
      END_STATE();
    case 1222:
      if (lookahead == 'y') ADVANCE(1251);
      END_STATE();
    case 1223:
      ACCEPT_TOKEN(anon_sym_resolution);
      END_STATE();
    case 1224:
      if (lookahead == 's') ADVANCE(1252);
      END_STATE();
    case 1225:
      if (lookahead == 'y') ADVANCE(1253);
      END_STATE();
    case 1226:
      ACCEPT_TOKEN(anon_sym_site_DASHnoise);
      END_STATE();
    case 1227:
      if (lookahead == 's') ADVANCE(1254);
      END_STATE();
    case 1228:
      if (lookahead == 'm') ADVANCE(1255);
      END_STATE();
    case 1229:
      if (lookahead == 'e') ADVANCE(1256);
      END_STATE();
    case 1230:
      if (lookahead == 'r') ADVANCE(1257);
      END_STATE();
    case 1231:
      if (lookahead == 'r') ADVANCE(1258);
      END_STATE();
    case 1232:
      if (lookahead == 'r') ADVANCE(1259);
      END_STATE();
    case 1233:
      ACCEPT_TOKEN(anon_sym_wavelength);
      if (lookahead == 's') ADVANCE(1260);
      END_STATE();
    case 1234:
      ACCEPT_TOKEN(anon_sym_certificate);
      END_STATE();
    case 1235:
      if (lookahead == 'n') ADVANCE(1261);
      END_STATE();
    case 1236:
      ACCEPT_TOKEN(anon_sym_directivity);
      END_STATE();
    case 1237:
      if (lookahead == 'a') ADVANCE(1262);
      END_STATE();
    case 1238:
      ACCEPT_TOKEN(anon_sym_height_DASHamsl);
      END_STATE();
    case 1239:
      if (lookahead == 't') ADVANCE(1263);
      END_STATE();
    case 1240:
      if (lookahead == 'n') ADVANCE(1264);
      END_STATE();
    case 1241:
      if (lookahead == 't') ADVANCE(1265);
      END_STATE();
    case 1242:
      if (lookahead == 'l') ADVANCE(1266);
      END_STATE();
    case 1243:
      if (lookahead == 't') ADVANCE(1267);
      END_STATE();
    case 1244:
      if (lookahead == 'y') ADVANCE(1268);
      END_STATE();
    case 1245:
      if (lookahead == 'r') ADVANCE(1269);
      END_STATE();
    case 1246:
      ACCEPT_TOKEN(anon_sym_quiet_DASHrural);
      END_STATE();
    case 1247:
      if (lookahead == 'q') ADVANCE(1270);
      END_STATE();
    case 1248:
      if (lookahead == 's') ADVANCE(1271);
      END_STATE();
    case 1249:
      if (lookahead == 't') ADVANCE(1272);
      END_STATE();
    case 1250:
      ACCEPT_TOKEN(anon_sym_residential);
      END_STATE();
    case 1251:
      ACCEPT_TOKEN(anon_sym_resistivity);
      END_STATE();
    case 1252:
      ACCEPT_TOKEN(anon_sym_return_DASHloss);
      END_STATE();
    case 1253:
      ACCEPT_TOKEN(anon_sym_sensitivity);
      END_STATE();
    case 1254:
      if (lookahead == 'e') ADVANCE(1273);
      END_STATE();
    case 1255:
      if (lookahead == 'e') ADVANCE(1274);
      END_STATE();
    case 1256:
      ACCEPT_TOKEN(anon_sym_temperature);
      END_STATE();
    case 1257:
      ACCEPT_TOKEN(anon_sym_transceiver);
      END_STATE();
    case 1258:
      if (lookahead == 'e') ADVANCE(1275);
      END_STATE();
    case 1259:
      ACCEPT_TOKEN(anon_sym_transmitter);
      END_STATE();
    case 1260:
      ACCEPT_TOKEN(anon_sym_wavelengths);
      END_STATE();
    case 1261:
      ACCEPT_TOKEN(anon_sym_construction);
      END_STATE();
    case 1262:
      if (lookahead == 'n') ADVANCE(1276);
      END_STATE();
    case 1263:
      if (lookahead == 'i') ADVANCE(1277);
      END_STATE();
    case 1264:
      ACCEPT_TOKEN(anon_sym_jurisdiction);
      END_STATE();
    case 1265:
      ACCEPT_TOKEN(anon_sym_loss_DASHtangent);
      END_STATE();
    case 1266:
      ACCEPT_TOKEN(anon_sym_occupational);
      END_STATE();
    case 1267:
      if (lookahead == 'i') ADVANCE(1278);
      END_STATE();
    case 1268:
      ACCEPT_TOKEN(anon_sym_permittivity);
      END_STATE();
    case 1269:
      ACCEPT_TOKEN(anon_sym_preamplifier);
      END_STATE();
    case 1270:
      if (lookahead == 'u') ADVANCE(1279);
      END_STATE();
    case 1271:
      ACCEPT_TOKEN(anon_sym_receive_DASHloss);
      END_STATE();
    case 1272:
      if (lookahead == 'y') ADVANCE(1280);
      END_STATE();
    case 1273:
      if (lookahead == 'd') ADVANCE(1281);
      END_STATE();
    case 1274:
      if (lookahead == 't') ADVANCE(1282);
      END_STATE();
    case 1275:
      if (lookahead == 'q') ADVANCE(1283);
      END_STATE();
    case 1276:
      ACCEPT_TOKEN(anon_sym_hata_DASHsuburban);
      END_STATE();
    case 1277:
      if (lookahead == 'v') ADVANCE(1284);
      END_STATE();
    case 1278:
      if (lookahead == 'v') ADVANCE(1285);
      END_STATE();
    case 1279:
      if (lookahead == 'e') ADVANCE(1286);
      END_STATE();
    case 1280:
      ACCEPT_TOKEN(anon_sym_repeatability);
      END_STATE();
    case 1281:
      ACCEPT_TOKEN(anon_sym_ssb_DASHprocessed);
      END_STATE();
    case 1282:
      if (lookahead == 'e') ADVANCE(1287);
      END_STATE();
    case 1283:
      if (lookahead == 'u') ADVANCE(1288);
      END_STATE();
    case 1284:
      if (lookahead == 'i') ADVANCE(1289);
      END_STATE();
    case 1285:
      if (lookahead == 'i') ADVANCE(1290);
      END_STATE();
    case 1286:
      if (lookahead == 'n') ADVANCE(1291);
      END_STATE();
    case 1287:
      if (lookahead == 'r') ADVANCE(1292);
      END_STATE();
    case 1288:
      if (lookahead == 'e') ADVANCE(1293);
      END_STATE();
    case 1289:
      if (lookahead == 't') ADVANCE(1294);
      END_STATE();
    case 1290:
      if (lookahead == 't') ADVANCE(1295);
      END_STATE();
    case 1291:
      if (lookahead == 'c') ADVANCE(1296);
      END_STATE();
    case 1292:
      ACCEPT_TOKEN(anon_sym_strand_DASHdiameter);
      END_STATE();
    case 1293:
      if (lookahead == 'n') ADVANCE(1297);
      END_STATE();
    case 1294:
      if (lookahead == 'y') ADVANCE(1298);
      END_STATE();
    case 1295:
      if (lookahead == 'y') ADVANCE(1299);
      END_STATE();
    case 1296:
      if (lookahead == 'y') ADVANCE(1300);
      END_STATE();
    case 1297:
      if (lookahead == 'c') ADVANCE(1301);
      END_STATE();
    case 1298:
      ACCEPT_TOKEN(anon_sym_inner_DASHresistivity);
      END_STATE();
    case 1299:
      ACCEPT_TOKEN(anon_sym_outer_DASHresistivity);
      END_STATE();
    case 1300:
      ACCEPT_TOKEN(anon_sym_receive_DASHfrequency);
      END_STATE();
    case 1301:
      if (lookahead == 'y') ADVANCE(1302);
      END_STATE();
    case 1302:
      ACCEPT_TOKEN(anon_sym_transmit_DASHfrequency);
      END_STATE();
    default:
      return false;
  }
}

static const TSLexMode ts_lex_modes[STATE_COUNT] = {
  [0] = {.lex_state = 0},
  [1] = {.lex_state = 156},
  [2] = {.lex_state = 0},
  [3] = {.lex_state = 153},
  [4] = {.lex_state = 154},
  [5] = {.lex_state = 154},
  [6] = {.lex_state = 154},
  [7] = {.lex_state = 156},
  [8] = {.lex_state = 156},
  [9] = {.lex_state = 156},
  [10] = {.lex_state = 156},
  [11] = {.lex_state = 154},
  [12] = {.lex_state = 154},
  [13] = {.lex_state = 154},
  [14] = {.lex_state = 154},
  [15] = {.lex_state = 154},
  [16] = {.lex_state = 154},
  [17] = {.lex_state = 154},
  [18] = {.lex_state = 154},
  [19] = {.lex_state = 154},
  [20] = {.lex_state = 154},
  [21] = {.lex_state = 155},
  [22] = {.lex_state = 155},
  [23] = {.lex_state = 155},
  [24] = {.lex_state = 155},
  [25] = {.lex_state = 155},
  [26] = {.lex_state = 155},
  [27] = {.lex_state = 155},
  [28] = {.lex_state = 155},
  [29] = {.lex_state = 155},
  [30] = {.lex_state = 155},
  [31] = {.lex_state = 155},
  [32] = {.lex_state = 154},
  [33] = {.lex_state = 154},
  [34] = {.lex_state = 154},
  [35] = {.lex_state = 154},
  [36] = {.lex_state = 154},
  [37] = {.lex_state = 154},
  [38] = {.lex_state = 156},
  [39] = {.lex_state = 156},
  [40] = {.lex_state = 156},
  [41] = {.lex_state = 156},
  [42] = {.lex_state = 156},
  [43] = {.lex_state = 4},
  [44] = {.lex_state = 5},
  [45] = {.lex_state = 5},
  [46] = {.lex_state = 5},
  [47] = {.lex_state = 5},
  [48] = {.lex_state = 5},
  [49] = {.lex_state = 5},
  [50] = {.lex_state = 5},
  [51] = {.lex_state = 5},
  [52] = {.lex_state = 10},
  [53] = {.lex_state = 10},
  [54] = {.lex_state = 4},
  [55] = {.lex_state = 4},
  [56] = {.lex_state = 4},
  [57] = {.lex_state = 4},
  [58] = {.lex_state = 4},
  [59] = {.lex_state = 4},
  [60] = {.lex_state = 4},
  [61] = {.lex_state = 4},
  [62] = {.lex_state = 4},
  [63] = {.lex_state = 4},
  [64] = {.lex_state = 0},
  [65] = {.lex_state = 0},
  [66] = {.lex_state = 0},
  [67] = {.lex_state = 0},
  [68] = {.lex_state = 0},
  [69] = {.lex_state = 0},
  [70] = {.lex_state = 5},
  [71] = {.lex_state = 5},
  [72] = {.lex_state = 5},
  [73] = {.lex_state = 26},
  [74] = {.lex_state = 26},
  [75] = {.lex_state = 26},
  [76] = {.lex_state = 26},
  [77] = {.lex_state = 26},
  [78] = {.lex_state = 26},
  [79] = {.lex_state = 26},
  [80] = {.lex_state = 0},
};

static const uint16_t ts_parse_table[LARGE_STATE_COUNT][SYMBOL_COUNT] = {
  [0] = {
    [ts_builtin_sym_end] = ACTIONS(1),
    [sym_name] = ACTIONS(1),
    [aux_sym__end_token1] = ACTIONS(1),
    [anon_sym_SEMI] = ACTIONS(1),
    [anon_sym_LBRACE] = ACTIONS(1),
    [anon_sym_RBRACE] = ACTIONS(1),
    [anon_sym_use] = ACTIONS(1),
    [anon_sym_band] = ACTIONS(1),
    [anon_sym_let] = ACTIONS(1),
    [anon_sym_cable] = ACTIONS(1),
    [anon_sym_connector] = ACTIONS(1),
    [anon_sym_device] = ACTIONS(1),
    [anon_sym_instrument] = ACTIONS(1),
    [anon_sym_session] = ACTIONS(1),
    [anon_sym_station] = ACTIONS(1),
    [anon_sym_chain] = ACTIONS(1),
    [anon_sym_licence] = ACTIONS(1),
    [anon_sym_rules] = ACTIONS(1),
    [anon_sym_link] = ACTIONS(1),
    [anon_sym_variant] = ACTIONS(1),
    [anon_sym_accept] = ACTIONS(1),
    [anon_sym_transmit] = ACTIONS(1),
    [anon_sym_receive] = ACTIONS(1),
    [anon_sym_impedance] = ACTIONS(1),
    [anon_sym_velocity] = ACTIONS(1),
    [anon_sym_loss] = ACTIONS(1),
    [anon_sym_construction] = ACTIONS(1),
    [anon_sym_wires] = ACTIONS(1),
    [anon_sym_valid] = ACTIONS(1),
    [anon_sym_accuracy] = ACTIONS(1),
    [anon_sym_rating] = ACTIONS(1),
    [anon_sym_voltage] = ACTIONS(1),
    [anon_sym_size] = ACTIONS(1),
    [anon_sym_conductor] = ACTIONS(1),
    [anon_sym_source] = ACTIONS(1),
    [anon_sym_recalled] = ACTIONS(1),
    [anon_sym_joins] = ACTIONS(1),
    [anon_sym_limit] = ACTIONS(1),
    [anon_sym_family] = ACTIONS(1),
    [anon_sym_bump] = ACTIONS(1),
    [anon_sym_return_DASHloss] = ACTIONS(1),
    [anon_sym_swr] = ACTIONS(1),
    [anon_sym_kind] = ACTIONS(1),
    [anon_sym_high] = ACTIONS(1),
    [anon_sym_low] = ACTIONS(1),
    [anon_sym_port] = ACTIONS(1),
    [anon_sym_from] = ACTIONS(1),
    [anon_sym_isolation] = ACTIONS(1),
    [anon_sym_ratio] = ACTIONS(1),
    [anon_sym_split] = ACTIONS(1),
    [anon_sym_tee] = ACTIONS(1),
    [anon_sym_reversed] = ACTIONS(1),
    [anon_sym_passes] = ACTIONS(1),
    [anon_sym_gain] = ACTIONS(1),
    [anon_sym_noise] = ACTIONS(1),
    [anon_sym_excess] = ACTIONS(1),
    [anon_sym_ways] = ACTIONS(1),
    [anon_sym_coupled] = ACTIONS(1),
    [anon_sym_calibrated] = ACTIONS(1),
    [anon_sym_scale] = ACTIONS(1),
    [anon_sym_resolution] = ACTIONS(1),
    [anon_sym_due] = ACTIONS(1),
    [anon_sym_linearity] = ACTIONS(1),
    [anon_sym_repeatability] = ACTIONS(1),
    [anon_sym_directivity] = ACTIONS(1),
    [anon_sym_certificate] = ACTIONS(1),
    [anon_sym_load] = ACTIONS(1),
    [anon_sym_read] = ACTIONS(1),
    [anon_sym_temperature] = ACTIONS(1),
    [anon_sym_generator] = ACTIONS(1),
    [anon_sym_drift] = ACTIONS(1),
    [anon_sym_piece] = ACTIONS(1),
    [anon_sym_readings] = ACTIONS(1),
    [anon_sym_resonance] = ACTIONS(1),
    [anon_sym_delay] = ACTIONS(1),
    [anon_sym_phase] = ACTIONS(1),
    [anon_sym_adapter] = ACTIONS(1),
    [anon_sym_position] = ACTIONS(1),
    [anon_sym_ground] = ACTIONS(1),
    [anon_sym_place] = ACTIONS(1),
    [anon_sym_under] = ACTIONS(1),
    [anon_sym_beside] = ACTIONS(1),
    [anon_sym_spot] = ACTIONS(1),
    [anon_sym_alone] = ACTIONS(1),
    [anon_sym_site_DASHnoise] = ACTIONS(1),
    [anon_sym_transmitter] = ACTIONS(1),
    [anon_sym_receiver] = ACTIONS(1),
    [anon_sym_transceiver] = ACTIONS(1),
    [anon_sym_run] = ACTIONS(1),
    [anon_sym_jumper] = ACTIONS(1),
    [anon_sym_tail] = ACTIONS(1),
    [anon_sym_pad] = ACTIONS(1),
    [anon_sym_filter] = ACTIONS(1),
    [anon_sym_isolator] = ACTIONS(1),
    [anon_sym_circulator] = ACTIONS(1),
    [anon_sym_protector] = ACTIONS(1),
    [anon_sym_switch] = ACTIONS(1),
    [anon_sym_coupler] = ACTIONS(1),
    [anon_sym_meter] = ACTIONS(1),
    [anon_sym_balun] = ACTIONS(1),
    [anon_sym_tuner] = ACTIONS(1),
    [anon_sym_duplexer] = ACTIONS(1),
    [anon_sym_diplexer] = ACTIONS(1),
    [anon_sym_combiner] = ACTIONS(1),
    [anon_sym_divider] = ACTIONS(1),
    [anon_sym_amplifier] = ACTIONS(1),
    [anon_sym_preamplifier] = ACTIONS(1),
    [anon_sym_antenna] = ACTIONS(1),
    [anon_sym_branches] = ACTIONS(1),
    [anon_sym_expect] = ACTIONS(1),
    [anon_sym_authority] = ACTIONS(1),
    [anon_sym_jurisdiction] = ACTIONS(1),
    [anon_sym_service] = ACTIONS(1),
    [anon_sym_edition] = ACTIONS(1),
    [anon_sym_dated] = ACTIONS(1),
    [anon_sym_until] = ACTIONS(1),
    [anon_sym_holder] = ACTIONS(1),
    [anon_sym_class] = ACTIONS(1),
    [anon_sym_ask] = ACTIONS(1),
    [anon_sym_threshold] = ACTIONS(1),
    [anon_sym_fixed] = ACTIONS(1),
    [anon_sym_condition] = ACTIONS(1),
    [anon_sym_reflection] = ACTIONS(1),
    [anon_sym_field] = ACTIONS(1),
    [anon_sym_hop] = ACTIONS(1),
    [anon_sym_profile] = ACTIONS(1),
    [anon_sym_distance] = ACTIONS(1),
    [anon_sym_k_DASHfactor] = ACTIONS(1),
    [anon_sym_need] = ACTIONS(1),
    [anon_sym_model] = ACTIONS(1),
    [anon_sym_coverage] = ACTIONS(1),
    [anon_sym_take] = ACTIONS(1),
    [anon_sym_put] = ACTIONS(1),
    [anon_sym_branch] = ACTIONS(1),
    [anon_sym_inner] = ACTIONS(1),
    [anon_sym_outer] = ACTIONS(1),
    [anon_sym_permittivity] = ACTIONS(1),
    [anon_sym_loss_DASHtangent] = ACTIONS(1),
    [anon_sym_strand] = ACTIONS(1),
    [anon_sym_strand_DASHdiameter] = ACTIONS(1),
    [anon_sym_braid] = ACTIONS(1),
    [anon_sym_resistivity] = ACTIONS(1),
    [anon_sym_inner_DASHresistivity] = ACTIONS(1),
    [anon_sym_outer_DASHresistivity] = ACTIONS(1),
    [anon_sym_diameter] = ACTIONS(1),
    [anon_sym_spacing] = ACTIONS(1),
    [anon_sym_baseline] = ACTIONS(1),
    [anon_sym_through] = ACTIONS(1),
    [anon_sym_open] = ACTIONS(1),
    [anon_sym_short] = ACTIONS(1),
    [anon_sym_equalise] = ACTIONS(1),
    [anon_sym_power] = ACTIONS(1),
    [anon_sym_mode] = ACTIONS(1),
    [anon_sym_duty] = ACTIONS(1),
    [anon_sym_keyed] = ACTIONS(1),
    [anon_sym_foldback] = ACTIONS(1),
    [anon_sym_bandwidth] = ACTIONS(1),
    [anon_sym_sensitivity] = ACTIONS(1),
    [anon_sym_blocking] = ACTIONS(1),
    [anon_sym_efficiency] = ACTIONS(1),
    [anon_sym_height] = ACTIONS(1),
    [anon_sym_pattern] = ACTIONS(1),
    [anon_sym_haat] = ACTIONS(1),
    [anon_sym_radius] = ACTIONS(1),
    [anon_sym_fails] = ACTIONS(1),
    [anon_sym_GHz] = ACTIONS(1),
    [anon_sym_Hz] = ACTIONS(1),
    [anon_sym_MHz] = ACTIONS(1),
    [anon_sym_above] = ACTIONS(1),
    [anon_sym_added] = ACTIONS(1),
    [anon_sym_after] = ACTIONS(1),
    [anon_sym_against] = ACTIONS(1),
    [anon_sym_agl] = ACTIONS(1),
    [anon_sym_allocated] = ACTIONS(1),
    [anon_sym_am] = ACTIONS(1),
    [anon_sym_ambient] = ACTIONS(1),
    [anon_sym_amsl] = ACTIONS(1),
    [anon_sym_apart] = ACTIONS(1),
    [anon_sym_at] = ACTIONS(1),
    [anon_sym_averaging] = ACTIONS(1),
    [anon_sym_below] = ACTIONS(1),
    [anon_sym_beyond] = ACTIONS(1),
    [anon_sym_blank] = ACTIONS(1),
    [anon_sym_bow] = ACTIONS(1),
    [anon_sym_bullington] = ACTIONS(1),
    [anon_sym_by] = ACTIONS(1),
    [anon_sym_carrier] = ACTIONS(1),
    [anon_sym_cascade] = ACTIONS(1),
    [anon_sym_city] = ACTIONS(1),
    [anon_sym_clad] = ACTIONS(1),
    [anon_sym_confidence] = ACTIONS(1),
    [anon_sym_corrected] = ACTIONS(1),
    [anon_sym_cw] = ACTIONS(1),
    [anon_sym_dB] = ACTIONS(1),
    [anon_sym_dBW] = ACTIONS(1),
    [anon_sym_dBd] = ACTIONS(1),
    [anon_sym_dBi] = ACTIONS(1),
    [anon_sym_dBm] = ACTIONS(1),
    [anon_sym_data] = ACTIONS(1),
    [anon_sym_date] = ACTIONS(1),
    [anon_sym_datum] = ACTIONS(1),
    [anon_sym_dc_DASHinput] = ACTIONS(1),
    [anon_sym_degrees] = ACTIONS(1),
    [anon_sym_delivered] = ACTIONS(1),
    [anon_sym_desense] = ACTIONS(1),
    [anon_sym_displayed] = ACTIONS(1),
    [anon_sym_dms] = ACTIONS(1),
    [anon_sym_down] = ACTIONS(1),
    [anon_sym_eirp] = ACTIONS(1),
    [anon_sym_elevation] = ACTIONS(1),
    [anon_sym_ends] = ACTIONS(1),
    [anon_sym_erp] = ACTIONS(1),
    [anon_sym_etrs89] = ACTIONS(1),
    [anon_sym_figure] = ACTIONS(1),
    [anon_sym_fm] = ACTIONS(1),
    [anon_sym_for] = ACTIONS(1),
    [anon_sym_forward] = ACTIONS(1),
    [anon_sym_free_DASHspace] = ACTIONS(1),
    [anon_sym_frequency] = ACTIONS(1),
    [anon_sym_ft] = ACTIONS(1),
    [anon_sym_full] = ACTIONS(1),
    [anon_sym_guess] = ACTIONS(1),
    [anon_sym_hata_DASHopen] = ACTIONS(1),
    [anon_sym_hata_DASHsuburban] = ACTIONS(1),
    [anon_sym_hata_DASHurban] = ACTIONS(1),
    [anon_sym_height_DASHamsl] = ACTIONS(1),
    [anon_sym_horizontal] = ACTIONS(1),
    [anon_sym_if] = ACTIONS(1),
    [anon_sym_in] = ACTIONS(1),
    [anon_sym_input] = ACTIONS(1),
    [anon_sym_instead] = ACTIONS(1),
    [anon_sym_k] = ACTIONS(1),
    [anon_sym_kHz] = ACTIONS(1),
    [anon_sym_kW] = ACTIONS(1),
    [anon_sym_km] = ACTIONS(1),
    [anon_sym_latitude] = ACTIONS(1),
    [anon_sym_longitude] = ACTIONS(1),
    [anon_sym_m] = ACTIONS(1),
    [anon_sym_mW] = ACTIONS(1),
    [anon_sym_maximum] = ACTIONS(1),
    [anon_sym_mean] = ACTIONS(1),
    [anon_sym_medium] = ACTIONS(1),
    [anon_sym_nad27] = ACTIONS(1),
    [anon_sym_nad83] = ACTIONS(1),
    [anon_sym_net] = ACTIONS(1),
    [anon_sym_no] = ACTIONS(1),
    [anon_sym_nominal] = ACTIONS(1),
    [anon_sym_occupational] = ACTIONS(1),
    [anon_sym_of] = ACTIONS(1),
    [anon_sym_offset] = ACTIONS(1),
    [anon_sym_on] = ACTIONS(1),
    [anon_sym_one_DASHedge] = ACTIONS(1),
    [anon_sym_out] = ACTIONS(1),
    [anon_sym_output] = ACTIONS(1),
    [anon_sym_over] = ACTIONS(1),
    [anon_sym_pep] = ACTIONS(1),
    [anon_sym_per] = ACTIONS(1),
    [anon_sym_places] = ACTIONS(1),
    [anon_sym_public] = ACTIONS(1),
    [anon_sym_quiet_DASHrural] = ACTIONS(1),
    [anon_sym_quieting] = ACTIONS(1),
    [anon_sym_rated] = ACTIONS(1),
    [anon_sym_reactance] = ACTIONS(1),
    [anon_sym_reading] = ACTIONS(1),
    [anon_sym_realized] = ACTIONS(1),
    [anon_sym_receive_DASHfrequency] = ACTIONS(1),
    [anon_sym_receive_DASHloss] = ACTIONS(1),
    [anon_sym_reference] = ACTIONS(1),
    [anon_sym_reflected] = ACTIONS(1),
    [anon_sym_rejects] = ACTIONS(1),
    [anon_sym_residential] = ACTIONS(1),
    [anon_sym_rural] = ACTIONS(1),
    [anon_sym_series] = ACTIONS(1),
    [anon_sym_shared] = ACTIONS(1),
    [anon_sym_sheet] = ACTIONS(1),
    [anon_sym_shunt] = ACTIONS(1),
    [anon_sym_sinad] = ACTIONS(1),
    [anon_sym_since] = ACTIONS(1),
    [anon_sym_snr] = ACTIONS(1),
    [anon_sym_spread] = ACTIONS(1),
    [anon_sym_ssb] = ACTIONS(1),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(1),
    [anon_sym_then] = ACTIONS(1),
    [anon_sym_title] = ACTIONS(1),
    [anon_sym_to] = ACTIONS(1),
    [anon_sym_total] = ACTIONS(1),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(1),
    [anon_sym_two_DASHray] = ACTIONS(1),
    [anon_sym_typical] = ACTIONS(1),
    [anon_sym_up] = ACTIONS(1),
    [anon_sym_vertical] = ACTIONS(1),
    [anon_sym_way] = ACTIONS(1),
    [anon_sym_wet] = ACTIONS(1),
    [anon_sym_wgs84] = ACTIONS(1),
    [anon_sym_with] = ACTIONS(1),
    [anon_sym_within] = ACTIONS(1),
    [anon_sym_yes] = ACTIONS(1),
    [anon_sym_COMMA] = ACTIONS(1),
    [anon_sym_EQ] = ACTIONS(1),
    [anon_sym_u00b1] = ACTIONS(1),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(1),
    [anon_sym_LPAREN] = ACTIONS(1),
    [anon_sym_RPAREN] = ACTIONS(1),
    [anon_sym_DASH] = ACTIONS(1),
    [anon_sym_u2212] = ACTIONS(1),
    [anon_sym_u2013] = ACTIONS(1),
    [anon_sym_PLUS] = ACTIONS(1),
    [anon_sym_STAR] = ACTIONS(1),
    [anon_sym_SLASH] = ACTIONS(1),
    [anon_sym_CARET] = ACTIONS(1),
    [sym__glued] = ACTIONS(1),
    [sym_date] = ACTIONS(1),
    [sym_dms] = ACTIONS(1),
    [sym_number] = ACTIONS(1),
    [aux_sym_unit_token1] = ACTIONS(1),
    [aux_sym_unit_token2] = ACTIONS(1),
    [aux_sym_unit_token3] = ACTIONS(1),
    [aux_sym_unit_token4] = ACTIONS(1),
    [aux_sym_unit_token5] = ACTIONS(1),
    [aux_sym_unit_token6] = ACTIONS(1),
    [anon_sym_wavelengths] = ACTIONS(1),
    [anon_sym_wavelength] = ACTIONS(1),
    [aux_sym_unit_token7] = ACTIONS(1),
    [aux_sym_unit_token8] = ACTIONS(1),
    [aux_sym_unit_token9] = ACTIONS(1),
    [aux_sym_unit_token10] = ACTIONS(1),
    [aux_sym_unit_token11] = ACTIONS(1),
    [aux_sym_unit_token12] = ACTIONS(1),
    [anon_sym_ohm_DASHm] = ACTIONS(1),
    [aux_sym_unit_token13] = ACTIONS(1),
    [aux_sym_unit_token14] = ACTIONS(1),
    [aux_sym_unit_token15] = ACTIONS(1),
    [anon_sym_degC] = ACTIONS(1),
    [anon_sym_degF] = ACTIONS(1),
    [anon_sym_ohms] = ACTIONS(1),
    [aux_sym_unit_token16] = ACTIONS(1),
    [aux_sym_unit_token17] = ACTIONS(1),
    [aux_sym_unit_token18] = ACTIONS(1),
    [anon_sym_deg] = ACTIONS(1),
    [anon_sym_min] = ACTIONS(1),
    [anon_sym_ohm] = ACTIONS(1),
    [anon_sym_cm] = ACTIONS(1),
    [anon_sym_kV] = ACTIONS(1),
    [anon_sym_mi] = ACTIONS(1),
    [anon_sym_mm] = ACTIONS(1),
    [anon_sym_ms] = ACTIONS(1),
    [anon_sym_ns] = ACTIONS(1),
    [anon_sym_uV] = ACTIONS(1),
    [anon_sym_uW] = ACTIONS(1),
    [anon_sym_us] = ACTIONS(1),
    [anon_sym_yd] = ACTIONS(1),
    [anon_sym_u00b0C] = ACTIONS(1),
    [anon_sym_u00b0F] = ACTIONS(1),
    [anon_sym_u00b5V] = ACTIONS(1),
    [anon_sym_u00b5W] = ACTIONS(1),
    [anon_sym_u00b5s] = ACTIONS(1),
    [anon_sym_u03a9m] = ACTIONS(1),
    [anon_sym_u03bcV] = ACTIONS(1),
    [anon_sym_u03bcW] = ACTIONS(1),
    [anon_sym_u03bcs] = ACTIONS(1),
    [anon_sym_u2126m] = ACTIONS(1),
    [anon_sym_PERCENT] = ACTIONS(1),
    [anon_sym_A] = ACTIONS(1),
    [anon_sym_V] = ACTIONS(1),
    [anon_sym_W] = ACTIONS(1),
    [anon_sym_h] = ACTIONS(1),
    [anon_sym_s] = ACTIONS(1),
    [anon_sym_u00b0] = ACTIONS(1),
    [anon_sym_u03a9] = ACTIONS(1),
    [anon_sym_u03bb] = ACTIONS(1),
    [anon_sym_u2126] = ACTIONS(1),
    [sym_digit_name] = ACTIONS(1),
    [sym_string] = ACTIONS(1),
    [sym_comment] = ACTIONS(3),
  },
  [1] = {
    [sym_source_file] = STATE(80),
    [sym__line] = STATE(8),
    [sym__end] = STATE(8),
    [sym_statement] = STATE(68),
    [sym_block_statement] = STATE(8),
    [sym__head] = STATE(64),
    [sym_keyword] = STATE(4),
    [sym_only_word] = STATE(4),
    [sym__value] = STATE(4),
    [sym_range] = STATE(4),
    [sym_tolerance] = STATE(4),
    [sym__expression] = STATE(11),
    [sym_parenthesized_expression] = STATE(13),
    [sym_negation] = STATE(13),
    [sym_binary_expression] = STATE(13),
    [sym_quantity] = STATE(13),
    [aux_sym_source_file_repeat1] = STATE(8),
    [ts_builtin_sym_end] = ACTIONS(5),
    [sym_name] = ACTIONS(7),
    [aux_sym__end_token1] = ACTIONS(9),
    [anon_sym_SEMI] = ACTIONS(9),
    [anon_sym_use] = ACTIONS(11),
    [anon_sym_band] = ACTIONS(11),
    [anon_sym_let] = ACTIONS(11),
    [anon_sym_cable] = ACTIONS(11),
    [anon_sym_connector] = ACTIONS(11),
    [anon_sym_device] = ACTIONS(11),
    [anon_sym_instrument] = ACTIONS(11),
    [anon_sym_session] = ACTIONS(11),
    [anon_sym_station] = ACTIONS(11),
    [anon_sym_chain] = ACTIONS(11),
    [anon_sym_licence] = ACTIONS(11),
    [anon_sym_rules] = ACTIONS(11),
    [anon_sym_link] = ACTIONS(11),
    [anon_sym_variant] = ACTIONS(11),
    [anon_sym_accept] = ACTIONS(11),
    [anon_sym_transmit] = ACTIONS(11),
    [anon_sym_receive] = ACTIONS(11),
    [anon_sym_impedance] = ACTIONS(11),
    [anon_sym_velocity] = ACTIONS(11),
    [anon_sym_loss] = ACTIONS(11),
    [anon_sym_construction] = ACTIONS(11),
    [anon_sym_wires] = ACTIONS(11),
    [anon_sym_valid] = ACTIONS(11),
    [anon_sym_accuracy] = ACTIONS(11),
    [anon_sym_rating] = ACTIONS(11),
    [anon_sym_voltage] = ACTIONS(11),
    [anon_sym_size] = ACTIONS(11),
    [anon_sym_conductor] = ACTIONS(11),
    [anon_sym_source] = ACTIONS(11),
    [anon_sym_recalled] = ACTIONS(11),
    [anon_sym_joins] = ACTIONS(11),
    [anon_sym_limit] = ACTIONS(11),
    [anon_sym_family] = ACTIONS(11),
    [anon_sym_bump] = ACTIONS(11),
    [anon_sym_return_DASHloss] = ACTIONS(11),
    [anon_sym_swr] = ACTIONS(11),
    [anon_sym_kind] = ACTIONS(11),
    [anon_sym_high] = ACTIONS(11),
    [anon_sym_low] = ACTIONS(11),
    [anon_sym_port] = ACTIONS(11),
    [anon_sym_from] = ACTIONS(11),
    [anon_sym_isolation] = ACTIONS(11),
    [anon_sym_ratio] = ACTIONS(11),
    [anon_sym_split] = ACTIONS(11),
    [anon_sym_tee] = ACTIONS(11),
    [anon_sym_reversed] = ACTIONS(11),
    [anon_sym_passes] = ACTIONS(11),
    [anon_sym_gain] = ACTIONS(11),
    [anon_sym_noise] = ACTIONS(11),
    [anon_sym_excess] = ACTIONS(11),
    [anon_sym_ways] = ACTIONS(11),
    [anon_sym_coupled] = ACTIONS(11),
    [anon_sym_calibrated] = ACTIONS(11),
    [anon_sym_scale] = ACTIONS(11),
    [anon_sym_resolution] = ACTIONS(11),
    [anon_sym_due] = ACTIONS(11),
    [anon_sym_linearity] = ACTIONS(11),
    [anon_sym_repeatability] = ACTIONS(11),
    [anon_sym_directivity] = ACTIONS(11),
    [anon_sym_certificate] = ACTIONS(11),
    [anon_sym_load] = ACTIONS(11),
    [anon_sym_read] = ACTIONS(11),
    [anon_sym_temperature] = ACTIONS(11),
    [anon_sym_generator] = ACTIONS(11),
    [anon_sym_drift] = ACTIONS(11),
    [anon_sym_piece] = ACTIONS(11),
    [anon_sym_readings] = ACTIONS(11),
    [anon_sym_resonance] = ACTIONS(11),
    [anon_sym_delay] = ACTIONS(11),
    [anon_sym_phase] = ACTIONS(11),
    [anon_sym_adapter] = ACTIONS(11),
    [anon_sym_position] = ACTIONS(11),
    [anon_sym_ground] = ACTIONS(11),
    [anon_sym_place] = ACTIONS(11),
    [anon_sym_under] = ACTIONS(11),
    [anon_sym_beside] = ACTIONS(11),
    [anon_sym_spot] = ACTIONS(11),
    [anon_sym_alone] = ACTIONS(11),
    [anon_sym_site_DASHnoise] = ACTIONS(11),
    [anon_sym_transmitter] = ACTIONS(11),
    [anon_sym_receiver] = ACTIONS(11),
    [anon_sym_transceiver] = ACTIONS(11),
    [anon_sym_run] = ACTIONS(11),
    [anon_sym_jumper] = ACTIONS(11),
    [anon_sym_tail] = ACTIONS(11),
    [anon_sym_pad] = ACTIONS(11),
    [anon_sym_filter] = ACTIONS(11),
    [anon_sym_isolator] = ACTIONS(11),
    [anon_sym_circulator] = ACTIONS(11),
    [anon_sym_protector] = ACTIONS(11),
    [anon_sym_switch] = ACTIONS(11),
    [anon_sym_coupler] = ACTIONS(11),
    [anon_sym_meter] = ACTIONS(11),
    [anon_sym_balun] = ACTIONS(11),
    [anon_sym_tuner] = ACTIONS(11),
    [anon_sym_duplexer] = ACTIONS(11),
    [anon_sym_diplexer] = ACTIONS(11),
    [anon_sym_combiner] = ACTIONS(11),
    [anon_sym_divider] = ACTIONS(11),
    [anon_sym_amplifier] = ACTIONS(11),
    [anon_sym_preamplifier] = ACTIONS(11),
    [anon_sym_antenna] = ACTIONS(11),
    [anon_sym_branches] = ACTIONS(11),
    [anon_sym_expect] = ACTIONS(11),
    [anon_sym_authority] = ACTIONS(11),
    [anon_sym_jurisdiction] = ACTIONS(11),
    [anon_sym_service] = ACTIONS(11),
    [anon_sym_edition] = ACTIONS(11),
    [anon_sym_dated] = ACTIONS(11),
    [anon_sym_until] = ACTIONS(11),
    [anon_sym_holder] = ACTIONS(11),
    [anon_sym_class] = ACTIONS(11),
    [anon_sym_ask] = ACTIONS(11),
    [anon_sym_threshold] = ACTIONS(11),
    [anon_sym_fixed] = ACTIONS(11),
    [anon_sym_condition] = ACTIONS(11),
    [anon_sym_reflection] = ACTIONS(11),
    [anon_sym_field] = ACTIONS(11),
    [anon_sym_hop] = ACTIONS(11),
    [anon_sym_profile] = ACTIONS(11),
    [anon_sym_distance] = ACTIONS(11),
    [anon_sym_k_DASHfactor] = ACTIONS(11),
    [anon_sym_need] = ACTIONS(11),
    [anon_sym_model] = ACTIONS(11),
    [anon_sym_coverage] = ACTIONS(11),
    [anon_sym_take] = ACTIONS(11),
    [anon_sym_put] = ACTIONS(11),
    [anon_sym_branch] = ACTIONS(11),
    [anon_sym_inner] = ACTIONS(11),
    [anon_sym_outer] = ACTIONS(11),
    [anon_sym_permittivity] = ACTIONS(11),
    [anon_sym_loss_DASHtangent] = ACTIONS(11),
    [anon_sym_strand] = ACTIONS(11),
    [anon_sym_strand_DASHdiameter] = ACTIONS(11),
    [anon_sym_braid] = ACTIONS(11),
    [anon_sym_resistivity] = ACTIONS(11),
    [anon_sym_inner_DASHresistivity] = ACTIONS(11),
    [anon_sym_outer_DASHresistivity] = ACTIONS(11),
    [anon_sym_diameter] = ACTIONS(11),
    [anon_sym_spacing] = ACTIONS(11),
    [anon_sym_baseline] = ACTIONS(11),
    [anon_sym_through] = ACTIONS(11),
    [anon_sym_open] = ACTIONS(11),
    [anon_sym_short] = ACTIONS(11),
    [anon_sym_equalise] = ACTIONS(11),
    [anon_sym_power] = ACTIONS(11),
    [anon_sym_mode] = ACTIONS(11),
    [anon_sym_duty] = ACTIONS(11),
    [anon_sym_keyed] = ACTIONS(11),
    [anon_sym_foldback] = ACTIONS(11),
    [anon_sym_bandwidth] = ACTIONS(11),
    [anon_sym_sensitivity] = ACTIONS(11),
    [anon_sym_blocking] = ACTIONS(11),
    [anon_sym_efficiency] = ACTIONS(11),
    [anon_sym_height] = ACTIONS(11),
    [anon_sym_pattern] = ACTIONS(11),
    [anon_sym_haat] = ACTIONS(11),
    [anon_sym_radius] = ACTIONS(11),
    [anon_sym_fails] = ACTIONS(11),
    [anon_sym_GHz] = ACTIONS(13),
    [anon_sym_Hz] = ACTIONS(13),
    [anon_sym_MHz] = ACTIONS(13),
    [anon_sym_above] = ACTIONS(13),
    [anon_sym_added] = ACTIONS(13),
    [anon_sym_after] = ACTIONS(13),
    [anon_sym_against] = ACTIONS(13),
    [anon_sym_agl] = ACTIONS(13),
    [anon_sym_allocated] = ACTIONS(13),
    [anon_sym_am] = ACTIONS(13),
    [anon_sym_ambient] = ACTIONS(13),
    [anon_sym_amsl] = ACTIONS(13),
    [anon_sym_apart] = ACTIONS(13),
    [anon_sym_at] = ACTIONS(13),
    [anon_sym_averaging] = ACTIONS(13),
    [anon_sym_below] = ACTIONS(13),
    [anon_sym_beyond] = ACTIONS(13),
    [anon_sym_blank] = ACTIONS(13),
    [anon_sym_bow] = ACTIONS(13),
    [anon_sym_bullington] = ACTIONS(13),
    [anon_sym_by] = ACTIONS(13),
    [anon_sym_carrier] = ACTIONS(13),
    [anon_sym_cascade] = ACTIONS(13),
    [anon_sym_city] = ACTIONS(13),
    [anon_sym_clad] = ACTIONS(13),
    [anon_sym_confidence] = ACTIONS(13),
    [anon_sym_corrected] = ACTIONS(13),
    [anon_sym_cw] = ACTIONS(13),
    [anon_sym_dB] = ACTIONS(13),
    [anon_sym_dBW] = ACTIONS(13),
    [anon_sym_dBd] = ACTIONS(13),
    [anon_sym_dBi] = ACTIONS(13),
    [anon_sym_dBm] = ACTIONS(13),
    [anon_sym_data] = ACTIONS(13),
    [anon_sym_date] = ACTIONS(13),
    [anon_sym_datum] = ACTIONS(13),
    [anon_sym_dc_DASHinput] = ACTIONS(13),
    [anon_sym_degrees] = ACTIONS(13),
    [anon_sym_delivered] = ACTIONS(13),
    [anon_sym_desense] = ACTIONS(13),
    [anon_sym_displayed] = ACTIONS(13),
    [anon_sym_dms] = ACTIONS(13),
    [anon_sym_down] = ACTIONS(13),
    [anon_sym_eirp] = ACTIONS(13),
    [anon_sym_elevation] = ACTIONS(13),
    [anon_sym_ends] = ACTIONS(13),
    [anon_sym_erp] = ACTIONS(13),
    [anon_sym_etrs89] = ACTIONS(13),
    [anon_sym_figure] = ACTIONS(13),
    [anon_sym_fm] = ACTIONS(13),
    [anon_sym_for] = ACTIONS(13),
    [anon_sym_forward] = ACTIONS(13),
    [anon_sym_free_DASHspace] = ACTIONS(13),
    [anon_sym_frequency] = ACTIONS(13),
    [anon_sym_ft] = ACTIONS(13),
    [anon_sym_full] = ACTIONS(13),
    [anon_sym_guess] = ACTIONS(13),
    [anon_sym_hata_DASHopen] = ACTIONS(13),
    [anon_sym_hata_DASHsuburban] = ACTIONS(13),
    [anon_sym_hata_DASHurban] = ACTIONS(13),
    [anon_sym_height_DASHamsl] = ACTIONS(13),
    [anon_sym_horizontal] = ACTIONS(13),
    [anon_sym_if] = ACTIONS(13),
    [anon_sym_in] = ACTIONS(13),
    [anon_sym_input] = ACTIONS(13),
    [anon_sym_instead] = ACTIONS(13),
    [anon_sym_k] = ACTIONS(13),
    [anon_sym_kHz] = ACTIONS(13),
    [anon_sym_kW] = ACTIONS(13),
    [anon_sym_km] = ACTIONS(13),
    [anon_sym_latitude] = ACTIONS(13),
    [anon_sym_longitude] = ACTIONS(13),
    [anon_sym_m] = ACTIONS(13),
    [anon_sym_mW] = ACTIONS(13),
    [anon_sym_maximum] = ACTIONS(13),
    [anon_sym_mean] = ACTIONS(13),
    [anon_sym_medium] = ACTIONS(13),
    [anon_sym_nad27] = ACTIONS(13),
    [anon_sym_nad83] = ACTIONS(13),
    [anon_sym_net] = ACTIONS(13),
    [anon_sym_no] = ACTIONS(13),
    [anon_sym_nominal] = ACTIONS(13),
    [anon_sym_occupational] = ACTIONS(13),
    [anon_sym_of] = ACTIONS(13),
    [anon_sym_offset] = ACTIONS(13),
    [anon_sym_on] = ACTIONS(13),
    [anon_sym_one_DASHedge] = ACTIONS(13),
    [anon_sym_out] = ACTIONS(13),
    [anon_sym_output] = ACTIONS(13),
    [anon_sym_over] = ACTIONS(13),
    [anon_sym_pep] = ACTIONS(13),
    [anon_sym_per] = ACTIONS(13),
    [anon_sym_places] = ACTIONS(13),
    [anon_sym_public] = ACTIONS(13),
    [anon_sym_quiet_DASHrural] = ACTIONS(13),
    [anon_sym_quieting] = ACTIONS(13),
    [anon_sym_rated] = ACTIONS(13),
    [anon_sym_reactance] = ACTIONS(13),
    [anon_sym_reading] = ACTIONS(13),
    [anon_sym_realized] = ACTIONS(13),
    [anon_sym_receive_DASHfrequency] = ACTIONS(13),
    [anon_sym_receive_DASHloss] = ACTIONS(13),
    [anon_sym_reference] = ACTIONS(13),
    [anon_sym_reflected] = ACTIONS(13),
    [anon_sym_rejects] = ACTIONS(13),
    [anon_sym_residential] = ACTIONS(13),
    [anon_sym_rural] = ACTIONS(13),
    [anon_sym_series] = ACTIONS(13),
    [anon_sym_shared] = ACTIONS(13),
    [anon_sym_sheet] = ACTIONS(13),
    [anon_sym_shunt] = ACTIONS(13),
    [anon_sym_sinad] = ACTIONS(13),
    [anon_sym_since] = ACTIONS(13),
    [anon_sym_snr] = ACTIONS(13),
    [anon_sym_spread] = ACTIONS(13),
    [anon_sym_ssb] = ACTIONS(13),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(13),
    [anon_sym_then] = ACTIONS(13),
    [anon_sym_title] = ACTIONS(13),
    [anon_sym_to] = ACTIONS(13),
    [anon_sym_total] = ACTIONS(13),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(13),
    [anon_sym_two_DASHray] = ACTIONS(13),
    [anon_sym_typical] = ACTIONS(13),
    [anon_sym_up] = ACTIONS(13),
    [anon_sym_vertical] = ACTIONS(13),
    [anon_sym_way] = ACTIONS(13),
    [anon_sym_wet] = ACTIONS(13),
    [anon_sym_wgs84] = ACTIONS(13),
    [anon_sym_with] = ACTIONS(13),
    [anon_sym_within] = ACTIONS(13),
    [anon_sym_yes] = ACTIONS(13),
    [anon_sym_LPAREN] = ACTIONS(15),
    [anon_sym_DASH] = ACTIONS(17),
    [anon_sym_u2212] = ACTIONS(17),
    [anon_sym_u2013] = ACTIONS(17),
    [sym__glued] = ACTIONS(19),
    [sym_number] = ACTIONS(21),
    [sym_digit_name] = ACTIONS(7),
    [sym_comment] = ACTIONS(3),
  },
  [2] = {
    [sym_unit] = STATE(16),
    [ts_builtin_sym_end] = ACTIONS(23),
    [sym_name] = ACTIONS(25),
    [aux_sym__end_token1] = ACTIONS(23),
    [anon_sym_SEMI] = ACTIONS(23),
    [anon_sym_LBRACE] = ACTIONS(23),
    [anon_sym_RBRACE] = ACTIONS(23),
    [anon_sym_use] = ACTIONS(25),
    [anon_sym_band] = ACTIONS(25),
    [anon_sym_let] = ACTIONS(25),
    [anon_sym_cable] = ACTIONS(25),
    [anon_sym_connector] = ACTIONS(25),
    [anon_sym_device] = ACTIONS(25),
    [anon_sym_instrument] = ACTIONS(25),
    [anon_sym_session] = ACTIONS(25),
    [anon_sym_station] = ACTIONS(25),
    [anon_sym_chain] = ACTIONS(25),
    [anon_sym_licence] = ACTIONS(25),
    [anon_sym_rules] = ACTIONS(25),
    [anon_sym_link] = ACTIONS(25),
    [anon_sym_variant] = ACTIONS(25),
    [anon_sym_accept] = ACTIONS(25),
    [anon_sym_transmit] = ACTIONS(25),
    [anon_sym_receive] = ACTIONS(25),
    [anon_sym_impedance] = ACTIONS(25),
    [anon_sym_velocity] = ACTIONS(25),
    [anon_sym_loss] = ACTIONS(25),
    [anon_sym_construction] = ACTIONS(25),
    [anon_sym_wires] = ACTIONS(25),
    [anon_sym_valid] = ACTIONS(25),
    [anon_sym_accuracy] = ACTIONS(25),
    [anon_sym_rating] = ACTIONS(25),
    [anon_sym_voltage] = ACTIONS(25),
    [anon_sym_size] = ACTIONS(25),
    [anon_sym_conductor] = ACTIONS(25),
    [anon_sym_source] = ACTIONS(25),
    [anon_sym_recalled] = ACTIONS(25),
    [anon_sym_joins] = ACTIONS(25),
    [anon_sym_limit] = ACTIONS(25),
    [anon_sym_family] = ACTIONS(25),
    [anon_sym_bump] = ACTIONS(25),
    [anon_sym_return_DASHloss] = ACTIONS(25),
    [anon_sym_swr] = ACTIONS(25),
    [anon_sym_kind] = ACTIONS(25),
    [anon_sym_high] = ACTIONS(25),
    [anon_sym_low] = ACTIONS(25),
    [anon_sym_port] = ACTIONS(25),
    [anon_sym_from] = ACTIONS(25),
    [anon_sym_isolation] = ACTIONS(25),
    [anon_sym_ratio] = ACTIONS(25),
    [anon_sym_split] = ACTIONS(25),
    [anon_sym_tee] = ACTIONS(25),
    [anon_sym_reversed] = ACTIONS(25),
    [anon_sym_passes] = ACTIONS(25),
    [anon_sym_gain] = ACTIONS(25),
    [anon_sym_noise] = ACTIONS(25),
    [anon_sym_excess] = ACTIONS(25),
    [anon_sym_ways] = ACTIONS(25),
    [anon_sym_coupled] = ACTIONS(25),
    [anon_sym_calibrated] = ACTIONS(25),
    [anon_sym_scale] = ACTIONS(25),
    [anon_sym_resolution] = ACTIONS(25),
    [anon_sym_due] = ACTIONS(25),
    [anon_sym_linearity] = ACTIONS(25),
    [anon_sym_repeatability] = ACTIONS(25),
    [anon_sym_directivity] = ACTIONS(25),
    [anon_sym_certificate] = ACTIONS(25),
    [anon_sym_load] = ACTIONS(25),
    [anon_sym_read] = ACTIONS(25),
    [anon_sym_temperature] = ACTIONS(25),
    [anon_sym_generator] = ACTIONS(25),
    [anon_sym_drift] = ACTIONS(25),
    [anon_sym_piece] = ACTIONS(25),
    [anon_sym_readings] = ACTIONS(25),
    [anon_sym_resonance] = ACTIONS(25),
    [anon_sym_delay] = ACTIONS(25),
    [anon_sym_phase] = ACTIONS(25),
    [anon_sym_adapter] = ACTIONS(25),
    [anon_sym_position] = ACTIONS(25),
    [anon_sym_ground] = ACTIONS(25),
    [anon_sym_place] = ACTIONS(25),
    [anon_sym_under] = ACTIONS(25),
    [anon_sym_beside] = ACTIONS(25),
    [anon_sym_spot] = ACTIONS(25),
    [anon_sym_alone] = ACTIONS(25),
    [anon_sym_site_DASHnoise] = ACTIONS(25),
    [anon_sym_transmitter] = ACTIONS(25),
    [anon_sym_receiver] = ACTIONS(25),
    [anon_sym_transceiver] = ACTIONS(25),
    [anon_sym_run] = ACTIONS(25),
    [anon_sym_jumper] = ACTIONS(25),
    [anon_sym_tail] = ACTIONS(25),
    [anon_sym_pad] = ACTIONS(25),
    [anon_sym_filter] = ACTIONS(25),
    [anon_sym_isolator] = ACTIONS(25),
    [anon_sym_circulator] = ACTIONS(25),
    [anon_sym_protector] = ACTIONS(25),
    [anon_sym_switch] = ACTIONS(25),
    [anon_sym_coupler] = ACTIONS(25),
    [anon_sym_meter] = ACTIONS(25),
    [anon_sym_balun] = ACTIONS(25),
    [anon_sym_tuner] = ACTIONS(25),
    [anon_sym_duplexer] = ACTIONS(25),
    [anon_sym_diplexer] = ACTIONS(25),
    [anon_sym_combiner] = ACTIONS(25),
    [anon_sym_divider] = ACTIONS(25),
    [anon_sym_amplifier] = ACTIONS(25),
    [anon_sym_preamplifier] = ACTIONS(25),
    [anon_sym_antenna] = ACTIONS(25),
    [anon_sym_branches] = ACTIONS(25),
    [anon_sym_expect] = ACTIONS(25),
    [anon_sym_authority] = ACTIONS(25),
    [anon_sym_jurisdiction] = ACTIONS(25),
    [anon_sym_service] = ACTIONS(25),
    [anon_sym_edition] = ACTIONS(25),
    [anon_sym_dated] = ACTIONS(25),
    [anon_sym_until] = ACTIONS(25),
    [anon_sym_holder] = ACTIONS(25),
    [anon_sym_class] = ACTIONS(25),
    [anon_sym_ask] = ACTIONS(25),
    [anon_sym_threshold] = ACTIONS(25),
    [anon_sym_fixed] = ACTIONS(25),
    [anon_sym_condition] = ACTIONS(25),
    [anon_sym_reflection] = ACTIONS(25),
    [anon_sym_field] = ACTIONS(25),
    [anon_sym_hop] = ACTIONS(25),
    [anon_sym_profile] = ACTIONS(25),
    [anon_sym_distance] = ACTIONS(25),
    [anon_sym_k_DASHfactor] = ACTIONS(25),
    [anon_sym_need] = ACTIONS(25),
    [anon_sym_model] = ACTIONS(25),
    [anon_sym_coverage] = ACTIONS(25),
    [anon_sym_take] = ACTIONS(25),
    [anon_sym_put] = ACTIONS(25),
    [anon_sym_branch] = ACTIONS(25),
    [anon_sym_inner] = ACTIONS(25),
    [anon_sym_outer] = ACTIONS(25),
    [anon_sym_permittivity] = ACTIONS(25),
    [anon_sym_loss_DASHtangent] = ACTIONS(25),
    [anon_sym_strand] = ACTIONS(25),
    [anon_sym_strand_DASHdiameter] = ACTIONS(25),
    [anon_sym_braid] = ACTIONS(25),
    [anon_sym_resistivity] = ACTIONS(25),
    [anon_sym_inner_DASHresistivity] = ACTIONS(25),
    [anon_sym_outer_DASHresistivity] = ACTIONS(25),
    [anon_sym_diameter] = ACTIONS(25),
    [anon_sym_spacing] = ACTIONS(25),
    [anon_sym_baseline] = ACTIONS(25),
    [anon_sym_through] = ACTIONS(25),
    [anon_sym_open] = ACTIONS(25),
    [anon_sym_short] = ACTIONS(25),
    [anon_sym_equalise] = ACTIONS(25),
    [anon_sym_power] = ACTIONS(25),
    [anon_sym_mode] = ACTIONS(25),
    [anon_sym_duty] = ACTIONS(25),
    [anon_sym_keyed] = ACTIONS(25),
    [anon_sym_foldback] = ACTIONS(25),
    [anon_sym_bandwidth] = ACTIONS(25),
    [anon_sym_sensitivity] = ACTIONS(25),
    [anon_sym_blocking] = ACTIONS(25),
    [anon_sym_efficiency] = ACTIONS(25),
    [anon_sym_height] = ACTIONS(25),
    [anon_sym_pattern] = ACTIONS(25),
    [anon_sym_haat] = ACTIONS(25),
    [anon_sym_radius] = ACTIONS(25),
    [anon_sym_fails] = ACTIONS(25),
    [anon_sym_GHz] = ACTIONS(27),
    [anon_sym_Hz] = ACTIONS(27),
    [anon_sym_MHz] = ACTIONS(27),
    [anon_sym_above] = ACTIONS(25),
    [anon_sym_added] = ACTIONS(25),
    [anon_sym_after] = ACTIONS(25),
    [anon_sym_against] = ACTIONS(25),
    [anon_sym_agl] = ACTIONS(25),
    [anon_sym_allocated] = ACTIONS(25),
    [anon_sym_am] = ACTIONS(25),
    [anon_sym_ambient] = ACTIONS(25),
    [anon_sym_amsl] = ACTIONS(25),
    [anon_sym_apart] = ACTIONS(25),
    [anon_sym_at] = ACTIONS(25),
    [anon_sym_averaging] = ACTIONS(25),
    [anon_sym_below] = ACTIONS(25),
    [anon_sym_beyond] = ACTIONS(25),
    [anon_sym_blank] = ACTIONS(25),
    [anon_sym_bow] = ACTIONS(25),
    [anon_sym_bullington] = ACTIONS(25),
    [anon_sym_by] = ACTIONS(25),
    [anon_sym_carrier] = ACTIONS(25),
    [anon_sym_cascade] = ACTIONS(25),
    [anon_sym_city] = ACTIONS(25),
    [anon_sym_clad] = ACTIONS(25),
    [anon_sym_confidence] = ACTIONS(25),
    [anon_sym_corrected] = ACTIONS(25),
    [anon_sym_cw] = ACTIONS(25),
    [anon_sym_dB] = ACTIONS(27),
    [anon_sym_dBW] = ACTIONS(27),
    [anon_sym_dBd] = ACTIONS(27),
    [anon_sym_dBi] = ACTIONS(27),
    [anon_sym_dBm] = ACTIONS(27),
    [anon_sym_data] = ACTIONS(25),
    [anon_sym_date] = ACTIONS(25),
    [anon_sym_datum] = ACTIONS(25),
    [anon_sym_dc_DASHinput] = ACTIONS(25),
    [anon_sym_degrees] = ACTIONS(25),
    [anon_sym_delivered] = ACTIONS(25),
    [anon_sym_desense] = ACTIONS(25),
    [anon_sym_displayed] = ACTIONS(25),
    [anon_sym_dms] = ACTIONS(25),
    [anon_sym_down] = ACTIONS(25),
    [anon_sym_eirp] = ACTIONS(25),
    [anon_sym_elevation] = ACTIONS(25),
    [anon_sym_ends] = ACTIONS(25),
    [anon_sym_erp] = ACTIONS(25),
    [anon_sym_etrs89] = ACTIONS(25),
    [anon_sym_figure] = ACTIONS(25),
    [anon_sym_fm] = ACTIONS(25),
    [anon_sym_for] = ACTIONS(25),
    [anon_sym_forward] = ACTIONS(25),
    [anon_sym_free_DASHspace] = ACTIONS(25),
    [anon_sym_frequency] = ACTIONS(25),
    [anon_sym_ft] = ACTIONS(27),
    [anon_sym_full] = ACTIONS(25),
    [anon_sym_guess] = ACTIONS(25),
    [anon_sym_hata_DASHopen] = ACTIONS(25),
    [anon_sym_hata_DASHsuburban] = ACTIONS(25),
    [anon_sym_hata_DASHurban] = ACTIONS(25),
    [anon_sym_height_DASHamsl] = ACTIONS(25),
    [anon_sym_horizontal] = ACTIONS(25),
    [anon_sym_if] = ACTIONS(25),
    [anon_sym_in] = ACTIONS(27),
    [anon_sym_input] = ACTIONS(25),
    [anon_sym_instead] = ACTIONS(25),
    [anon_sym_k] = ACTIONS(25),
    [anon_sym_kHz] = ACTIONS(27),
    [anon_sym_kW] = ACTIONS(27),
    [anon_sym_km] = ACTIONS(27),
    [anon_sym_latitude] = ACTIONS(25),
    [anon_sym_longitude] = ACTIONS(25),
    [anon_sym_m] = ACTIONS(27),
    [anon_sym_mW] = ACTIONS(27),
    [anon_sym_maximum] = ACTIONS(25),
    [anon_sym_mean] = ACTIONS(25),
    [anon_sym_medium] = ACTIONS(25),
    [anon_sym_nad27] = ACTIONS(25),
    [anon_sym_nad83] = ACTIONS(25),
    [anon_sym_net] = ACTIONS(25),
    [anon_sym_no] = ACTIONS(25),
    [anon_sym_nominal] = ACTIONS(25),
    [anon_sym_occupational] = ACTIONS(25),
    [anon_sym_of] = ACTIONS(25),
    [anon_sym_offset] = ACTIONS(25),
    [anon_sym_on] = ACTIONS(25),
    [anon_sym_one_DASHedge] = ACTIONS(25),
    [anon_sym_out] = ACTIONS(25),
    [anon_sym_output] = ACTIONS(25),
    [anon_sym_over] = ACTIONS(25),
    [anon_sym_pep] = ACTIONS(25),
    [anon_sym_per] = ACTIONS(29),
    [anon_sym_places] = ACTIONS(25),
    [anon_sym_public] = ACTIONS(25),
    [anon_sym_quiet_DASHrural] = ACTIONS(25),
    [anon_sym_quieting] = ACTIONS(25),
    [anon_sym_rated] = ACTIONS(25),
    [anon_sym_reactance] = ACTIONS(25),
    [anon_sym_reading] = ACTIONS(25),
    [anon_sym_realized] = ACTIONS(25),
    [anon_sym_receive_DASHfrequency] = ACTIONS(25),
    [anon_sym_receive_DASHloss] = ACTIONS(25),
    [anon_sym_reference] = ACTIONS(25),
    [anon_sym_reflected] = ACTIONS(25),
    [anon_sym_rejects] = ACTIONS(25),
    [anon_sym_residential] = ACTIONS(25),
    [anon_sym_rural] = ACTIONS(25),
    [anon_sym_series] = ACTIONS(25),
    [anon_sym_shared] = ACTIONS(25),
    [anon_sym_sheet] = ACTIONS(25),
    [anon_sym_shunt] = ACTIONS(25),
    [anon_sym_sinad] = ACTIONS(25),
    [anon_sym_since] = ACTIONS(25),
    [anon_sym_snr] = ACTIONS(25),
    [anon_sym_spread] = ACTIONS(25),
    [anon_sym_ssb] = ACTIONS(25),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(25),
    [anon_sym_then] = ACTIONS(25),
    [anon_sym_title] = ACTIONS(25),
    [anon_sym_to] = ACTIONS(25),
    [anon_sym_total] = ACTIONS(25),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(25),
    [anon_sym_two_DASHray] = ACTIONS(25),
    [anon_sym_typical] = ACTIONS(25),
    [anon_sym_up] = ACTIONS(25),
    [anon_sym_vertical] = ACTIONS(25),
    [anon_sym_way] = ACTIONS(25),
    [anon_sym_wet] = ACTIONS(25),
    [anon_sym_wgs84] = ACTIONS(25),
    [anon_sym_with] = ACTIONS(25),
    [anon_sym_within] = ACTIONS(25),
    [anon_sym_yes] = ACTIONS(25),
    [anon_sym_COMMA] = ACTIONS(23),
    [anon_sym_EQ] = ACTIONS(23),
    [anon_sym_u00b1] = ACTIONS(23),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(23),
    [anon_sym_LPAREN] = ACTIONS(23),
    [anon_sym_DASH] = ACTIONS(25),
    [anon_sym_u2212] = ACTIONS(25),
    [anon_sym_u2013] = ACTIONS(25),
    [anon_sym_PLUS] = ACTIONS(25),
    [anon_sym_STAR] = ACTIONS(23),
    [anon_sym_SLASH] = ACTIONS(25),
    [anon_sym_CARET] = ACTIONS(23),
    [sym__glued] = ACTIONS(25),
    [sym_date] = ACTIONS(25),
    [sym_dms] = ACTIONS(23),
    [sym_number] = ACTIONS(25),
    [aux_sym_unit_token1] = ACTIONS(31),
    [aux_sym_unit_token2] = ACTIONS(31),
    [aux_sym_unit_token3] = ACTIONS(31),
    [aux_sym_unit_token4] = ACTIONS(31),
    [aux_sym_unit_token5] = ACTIONS(31),
    [aux_sym_unit_token6] = ACTIONS(31),
    [anon_sym_wavelengths] = ACTIONS(27),
    [anon_sym_wavelength] = ACTIONS(27),
    [aux_sym_unit_token7] = ACTIONS(27),
    [aux_sym_unit_token8] = ACTIONS(27),
    [aux_sym_unit_token9] = ACTIONS(31),
    [aux_sym_unit_token10] = ACTIONS(31),
    [aux_sym_unit_token11] = ACTIONS(31),
    [aux_sym_unit_token12] = ACTIONS(31),
    [anon_sym_ohm_DASHm] = ACTIONS(27),
    [aux_sym_unit_token13] = ACTIONS(31),
    [aux_sym_unit_token14] = ACTIONS(31),
    [aux_sym_unit_token15] = ACTIONS(31),
    [anon_sym_degC] = ACTIONS(27),
    [anon_sym_degF] = ACTIONS(27),
    [anon_sym_ohms] = ACTIONS(27),
    [aux_sym_unit_token16] = ACTIONS(31),
    [aux_sym_unit_token17] = ACTIONS(31),
    [aux_sym_unit_token18] = ACTIONS(31),
    [anon_sym_deg] = ACTIONS(27),
    [anon_sym_min] = ACTIONS(27),
    [anon_sym_ohm] = ACTIONS(27),
    [anon_sym_cm] = ACTIONS(27),
    [anon_sym_kV] = ACTIONS(27),
    [anon_sym_mi] = ACTIONS(27),
    [anon_sym_mm] = ACTIONS(27),
    [anon_sym_ms] = ACTIONS(27),
    [anon_sym_ns] = ACTIONS(27),
    [anon_sym_uV] = ACTIONS(27),
    [anon_sym_uW] = ACTIONS(27),
    [anon_sym_us] = ACTIONS(27),
    [anon_sym_yd] = ACTIONS(27),
    [anon_sym_u00b0C] = ACTIONS(31),
    [anon_sym_u00b0F] = ACTIONS(31),
    [anon_sym_u00b5V] = ACTIONS(31),
    [anon_sym_u00b5W] = ACTIONS(31),
    [anon_sym_u00b5s] = ACTIONS(31),
    [anon_sym_u03a9m] = ACTIONS(31),
    [anon_sym_u03bcV] = ACTIONS(31),
    [anon_sym_u03bcW] = ACTIONS(31),
    [anon_sym_u03bcs] = ACTIONS(31),
    [anon_sym_u2126m] = ACTIONS(31),
    [anon_sym_PERCENT] = ACTIONS(31),
    [anon_sym_A] = ACTIONS(27),
    [anon_sym_V] = ACTIONS(27),
    [anon_sym_W] = ACTIONS(27),
    [anon_sym_h] = ACTIONS(27),
    [anon_sym_s] = ACTIONS(27),
    [anon_sym_u00b0] = ACTIONS(27),
    [anon_sym_u03a9] = ACTIONS(27),
    [anon_sym_u03bb] = ACTIONS(31),
    [anon_sym_u2126] = ACTIONS(27),
    [sym_digit_name] = ACTIONS(25),
    [sym_string] = ACTIONS(23),
    [sym_comment] = ACTIONS(3),
  },
  [3] = {
    [sym_unit] = STATE(29),
    [ts_builtin_sym_end] = ACTIONS(23),
    [sym_name] = ACTIONS(25),
    [aux_sym__end_token1] = ACTIONS(23),
    [anon_sym_SEMI] = ACTIONS(23),
    [anon_sym_LBRACE] = ACTIONS(23),
    [anon_sym_RBRACE] = ACTIONS(23),
    [anon_sym_use] = ACTIONS(25),
    [anon_sym_band] = ACTIONS(25),
    [anon_sym_let] = ACTIONS(25),
    [anon_sym_cable] = ACTIONS(25),
    [anon_sym_connector] = ACTIONS(25),
    [anon_sym_device] = ACTIONS(25),
    [anon_sym_instrument] = ACTIONS(25),
    [anon_sym_session] = ACTIONS(25),
    [anon_sym_station] = ACTIONS(25),
    [anon_sym_chain] = ACTIONS(25),
    [anon_sym_licence] = ACTIONS(25),
    [anon_sym_rules] = ACTIONS(25),
    [anon_sym_link] = ACTIONS(25),
    [anon_sym_variant] = ACTIONS(25),
    [anon_sym_accept] = ACTIONS(25),
    [anon_sym_transmit] = ACTIONS(25),
    [anon_sym_receive] = ACTIONS(25),
    [anon_sym_impedance] = ACTIONS(25),
    [anon_sym_velocity] = ACTIONS(25),
    [anon_sym_loss] = ACTIONS(25),
    [anon_sym_construction] = ACTIONS(25),
    [anon_sym_wires] = ACTIONS(25),
    [anon_sym_valid] = ACTIONS(25),
    [anon_sym_accuracy] = ACTIONS(25),
    [anon_sym_rating] = ACTIONS(25),
    [anon_sym_voltage] = ACTIONS(25),
    [anon_sym_size] = ACTIONS(25),
    [anon_sym_conductor] = ACTIONS(25),
    [anon_sym_source] = ACTIONS(25),
    [anon_sym_recalled] = ACTIONS(25),
    [anon_sym_joins] = ACTIONS(25),
    [anon_sym_limit] = ACTIONS(25),
    [anon_sym_family] = ACTIONS(25),
    [anon_sym_bump] = ACTIONS(25),
    [anon_sym_return_DASHloss] = ACTIONS(25),
    [anon_sym_swr] = ACTIONS(25),
    [anon_sym_kind] = ACTIONS(25),
    [anon_sym_high] = ACTIONS(25),
    [anon_sym_low] = ACTIONS(25),
    [anon_sym_port] = ACTIONS(25),
    [anon_sym_from] = ACTIONS(25),
    [anon_sym_isolation] = ACTIONS(25),
    [anon_sym_ratio] = ACTIONS(25),
    [anon_sym_split] = ACTIONS(25),
    [anon_sym_tee] = ACTIONS(25),
    [anon_sym_reversed] = ACTIONS(25),
    [anon_sym_passes] = ACTIONS(25),
    [anon_sym_gain] = ACTIONS(25),
    [anon_sym_noise] = ACTIONS(25),
    [anon_sym_excess] = ACTIONS(25),
    [anon_sym_ways] = ACTIONS(25),
    [anon_sym_coupled] = ACTIONS(25),
    [anon_sym_calibrated] = ACTIONS(25),
    [anon_sym_scale] = ACTIONS(25),
    [anon_sym_resolution] = ACTIONS(25),
    [anon_sym_due] = ACTIONS(25),
    [anon_sym_linearity] = ACTIONS(25),
    [anon_sym_repeatability] = ACTIONS(25),
    [anon_sym_directivity] = ACTIONS(25),
    [anon_sym_certificate] = ACTIONS(25),
    [anon_sym_load] = ACTIONS(25),
    [anon_sym_read] = ACTIONS(25),
    [anon_sym_temperature] = ACTIONS(25),
    [anon_sym_generator] = ACTIONS(25),
    [anon_sym_drift] = ACTIONS(25),
    [anon_sym_piece] = ACTIONS(25),
    [anon_sym_readings] = ACTIONS(25),
    [anon_sym_resonance] = ACTIONS(25),
    [anon_sym_delay] = ACTIONS(25),
    [anon_sym_phase] = ACTIONS(25),
    [anon_sym_adapter] = ACTIONS(25),
    [anon_sym_position] = ACTIONS(25),
    [anon_sym_ground] = ACTIONS(25),
    [anon_sym_place] = ACTIONS(25),
    [anon_sym_under] = ACTIONS(25),
    [anon_sym_beside] = ACTIONS(25),
    [anon_sym_spot] = ACTIONS(25),
    [anon_sym_alone] = ACTIONS(25),
    [anon_sym_site_DASHnoise] = ACTIONS(25),
    [anon_sym_transmitter] = ACTIONS(25),
    [anon_sym_receiver] = ACTIONS(25),
    [anon_sym_transceiver] = ACTIONS(25),
    [anon_sym_run] = ACTIONS(25),
    [anon_sym_jumper] = ACTIONS(25),
    [anon_sym_tail] = ACTIONS(25),
    [anon_sym_pad] = ACTIONS(25),
    [anon_sym_filter] = ACTIONS(25),
    [anon_sym_isolator] = ACTIONS(25),
    [anon_sym_circulator] = ACTIONS(25),
    [anon_sym_protector] = ACTIONS(25),
    [anon_sym_switch] = ACTIONS(25),
    [anon_sym_coupler] = ACTIONS(25),
    [anon_sym_meter] = ACTIONS(25),
    [anon_sym_balun] = ACTIONS(25),
    [anon_sym_tuner] = ACTIONS(25),
    [anon_sym_duplexer] = ACTIONS(25),
    [anon_sym_diplexer] = ACTIONS(25),
    [anon_sym_combiner] = ACTIONS(25),
    [anon_sym_divider] = ACTIONS(25),
    [anon_sym_amplifier] = ACTIONS(25),
    [anon_sym_preamplifier] = ACTIONS(25),
    [anon_sym_antenna] = ACTIONS(25),
    [anon_sym_branches] = ACTIONS(25),
    [anon_sym_expect] = ACTIONS(25),
    [anon_sym_authority] = ACTIONS(25),
    [anon_sym_jurisdiction] = ACTIONS(25),
    [anon_sym_service] = ACTIONS(25),
    [anon_sym_edition] = ACTIONS(25),
    [anon_sym_dated] = ACTIONS(25),
    [anon_sym_until] = ACTIONS(25),
    [anon_sym_holder] = ACTIONS(25),
    [anon_sym_class] = ACTIONS(25),
    [anon_sym_ask] = ACTIONS(25),
    [anon_sym_threshold] = ACTIONS(25),
    [anon_sym_fixed] = ACTIONS(25),
    [anon_sym_condition] = ACTIONS(25),
    [anon_sym_reflection] = ACTIONS(25),
    [anon_sym_field] = ACTIONS(25),
    [anon_sym_hop] = ACTIONS(25),
    [anon_sym_profile] = ACTIONS(25),
    [anon_sym_distance] = ACTIONS(25),
    [anon_sym_k_DASHfactor] = ACTIONS(25),
    [anon_sym_need] = ACTIONS(25),
    [anon_sym_model] = ACTIONS(25),
    [anon_sym_coverage] = ACTIONS(25),
    [anon_sym_take] = ACTIONS(25),
    [anon_sym_put] = ACTIONS(25),
    [anon_sym_branch] = ACTIONS(25),
    [anon_sym_inner] = ACTIONS(25),
    [anon_sym_outer] = ACTIONS(25),
    [anon_sym_permittivity] = ACTIONS(25),
    [anon_sym_loss_DASHtangent] = ACTIONS(25),
    [anon_sym_strand] = ACTIONS(25),
    [anon_sym_strand_DASHdiameter] = ACTIONS(25),
    [anon_sym_braid] = ACTIONS(25),
    [anon_sym_resistivity] = ACTIONS(25),
    [anon_sym_inner_DASHresistivity] = ACTIONS(25),
    [anon_sym_outer_DASHresistivity] = ACTIONS(25),
    [anon_sym_diameter] = ACTIONS(25),
    [anon_sym_spacing] = ACTIONS(25),
    [anon_sym_baseline] = ACTIONS(25),
    [anon_sym_through] = ACTIONS(25),
    [anon_sym_open] = ACTIONS(25),
    [anon_sym_short] = ACTIONS(25),
    [anon_sym_equalise] = ACTIONS(25),
    [anon_sym_power] = ACTIONS(25),
    [anon_sym_mode] = ACTIONS(25),
    [anon_sym_duty] = ACTIONS(25),
    [anon_sym_keyed] = ACTIONS(25),
    [anon_sym_foldback] = ACTIONS(25),
    [anon_sym_bandwidth] = ACTIONS(25),
    [anon_sym_sensitivity] = ACTIONS(25),
    [anon_sym_blocking] = ACTIONS(25),
    [anon_sym_efficiency] = ACTIONS(25),
    [anon_sym_height] = ACTIONS(25),
    [anon_sym_pattern] = ACTIONS(25),
    [anon_sym_haat] = ACTIONS(25),
    [anon_sym_radius] = ACTIONS(25),
    [anon_sym_fails] = ACTIONS(25),
    [anon_sym_GHz] = ACTIONS(33),
    [anon_sym_Hz] = ACTIONS(33),
    [anon_sym_MHz] = ACTIONS(33),
    [anon_sym_above] = ACTIONS(25),
    [anon_sym_added] = ACTIONS(25),
    [anon_sym_after] = ACTIONS(25),
    [anon_sym_against] = ACTIONS(25),
    [anon_sym_agl] = ACTIONS(25),
    [anon_sym_allocated] = ACTIONS(25),
    [anon_sym_am] = ACTIONS(25),
    [anon_sym_ambient] = ACTIONS(25),
    [anon_sym_amsl] = ACTIONS(25),
    [anon_sym_apart] = ACTIONS(25),
    [anon_sym_at] = ACTIONS(25),
    [anon_sym_averaging] = ACTIONS(25),
    [anon_sym_below] = ACTIONS(25),
    [anon_sym_beyond] = ACTIONS(25),
    [anon_sym_blank] = ACTIONS(25),
    [anon_sym_bow] = ACTIONS(25),
    [anon_sym_bullington] = ACTIONS(25),
    [anon_sym_by] = ACTIONS(25),
    [anon_sym_carrier] = ACTIONS(25),
    [anon_sym_cascade] = ACTIONS(25),
    [anon_sym_city] = ACTIONS(25),
    [anon_sym_clad] = ACTIONS(25),
    [anon_sym_confidence] = ACTIONS(25),
    [anon_sym_corrected] = ACTIONS(25),
    [anon_sym_cw] = ACTIONS(25),
    [anon_sym_dB] = ACTIONS(33),
    [anon_sym_dBW] = ACTIONS(33),
    [anon_sym_dBd] = ACTIONS(33),
    [anon_sym_dBi] = ACTIONS(33),
    [anon_sym_dBm] = ACTIONS(33),
    [anon_sym_data] = ACTIONS(25),
    [anon_sym_date] = ACTIONS(25),
    [anon_sym_datum] = ACTIONS(25),
    [anon_sym_dc_DASHinput] = ACTIONS(25),
    [anon_sym_degrees] = ACTIONS(25),
    [anon_sym_delivered] = ACTIONS(25),
    [anon_sym_desense] = ACTIONS(25),
    [anon_sym_displayed] = ACTIONS(25),
    [anon_sym_dms] = ACTIONS(25),
    [anon_sym_down] = ACTIONS(25),
    [anon_sym_eirp] = ACTIONS(25),
    [anon_sym_elevation] = ACTIONS(25),
    [anon_sym_ends] = ACTIONS(25),
    [anon_sym_erp] = ACTIONS(25),
    [anon_sym_etrs89] = ACTIONS(25),
    [anon_sym_figure] = ACTIONS(25),
    [anon_sym_fm] = ACTIONS(25),
    [anon_sym_for] = ACTIONS(25),
    [anon_sym_forward] = ACTIONS(25),
    [anon_sym_free_DASHspace] = ACTIONS(25),
    [anon_sym_frequency] = ACTIONS(25),
    [anon_sym_ft] = ACTIONS(33),
    [anon_sym_full] = ACTIONS(25),
    [anon_sym_guess] = ACTIONS(25),
    [anon_sym_hata_DASHopen] = ACTIONS(25),
    [anon_sym_hata_DASHsuburban] = ACTIONS(25),
    [anon_sym_hata_DASHurban] = ACTIONS(25),
    [anon_sym_height_DASHamsl] = ACTIONS(25),
    [anon_sym_horizontal] = ACTIONS(25),
    [anon_sym_if] = ACTIONS(25),
    [anon_sym_in] = ACTIONS(33),
    [anon_sym_input] = ACTIONS(25),
    [anon_sym_instead] = ACTIONS(25),
    [anon_sym_k] = ACTIONS(25),
    [anon_sym_kHz] = ACTIONS(33),
    [anon_sym_kW] = ACTIONS(33),
    [anon_sym_km] = ACTIONS(33),
    [anon_sym_latitude] = ACTIONS(25),
    [anon_sym_longitude] = ACTIONS(25),
    [anon_sym_m] = ACTIONS(33),
    [anon_sym_mW] = ACTIONS(33),
    [anon_sym_maximum] = ACTIONS(25),
    [anon_sym_mean] = ACTIONS(25),
    [anon_sym_medium] = ACTIONS(25),
    [anon_sym_nad27] = ACTIONS(25),
    [anon_sym_nad83] = ACTIONS(25),
    [anon_sym_net] = ACTIONS(25),
    [anon_sym_no] = ACTIONS(25),
    [anon_sym_nominal] = ACTIONS(25),
    [anon_sym_occupational] = ACTIONS(25),
    [anon_sym_of] = ACTIONS(25),
    [anon_sym_offset] = ACTIONS(25),
    [anon_sym_on] = ACTIONS(25),
    [anon_sym_one_DASHedge] = ACTIONS(25),
    [anon_sym_out] = ACTIONS(25),
    [anon_sym_output] = ACTIONS(25),
    [anon_sym_over] = ACTIONS(25),
    [anon_sym_pep] = ACTIONS(25),
    [anon_sym_per] = ACTIONS(35),
    [anon_sym_places] = ACTIONS(25),
    [anon_sym_public] = ACTIONS(25),
    [anon_sym_quiet_DASHrural] = ACTIONS(25),
    [anon_sym_quieting] = ACTIONS(25),
    [anon_sym_rated] = ACTIONS(25),
    [anon_sym_reactance] = ACTIONS(25),
    [anon_sym_reading] = ACTIONS(25),
    [anon_sym_realized] = ACTIONS(25),
    [anon_sym_receive_DASHfrequency] = ACTIONS(25),
    [anon_sym_receive_DASHloss] = ACTIONS(25),
    [anon_sym_reference] = ACTIONS(25),
    [anon_sym_reflected] = ACTIONS(25),
    [anon_sym_rejects] = ACTIONS(25),
    [anon_sym_residential] = ACTIONS(25),
    [anon_sym_rural] = ACTIONS(25),
    [anon_sym_series] = ACTIONS(25),
    [anon_sym_shared] = ACTIONS(25),
    [anon_sym_sheet] = ACTIONS(25),
    [anon_sym_shunt] = ACTIONS(25),
    [anon_sym_sinad] = ACTIONS(25),
    [anon_sym_since] = ACTIONS(25),
    [anon_sym_snr] = ACTIONS(25),
    [anon_sym_spread] = ACTIONS(25),
    [anon_sym_ssb] = ACTIONS(25),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(25),
    [anon_sym_then] = ACTIONS(25),
    [anon_sym_title] = ACTIONS(25),
    [anon_sym_to] = ACTIONS(25),
    [anon_sym_total] = ACTIONS(25),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(25),
    [anon_sym_two_DASHray] = ACTIONS(25),
    [anon_sym_typical] = ACTIONS(25),
    [anon_sym_up] = ACTIONS(25),
    [anon_sym_vertical] = ACTIONS(25),
    [anon_sym_way] = ACTIONS(25),
    [anon_sym_wet] = ACTIONS(25),
    [anon_sym_wgs84] = ACTIONS(25),
    [anon_sym_with] = ACTIONS(25),
    [anon_sym_within] = ACTIONS(25),
    [anon_sym_yes] = ACTIONS(25),
    [anon_sym_COMMA] = ACTIONS(23),
    [anon_sym_EQ] = ACTIONS(23),
    [anon_sym_LPAREN] = ACTIONS(23),
    [anon_sym_DASH] = ACTIONS(25),
    [anon_sym_u2212] = ACTIONS(25),
    [anon_sym_u2013] = ACTIONS(25),
    [anon_sym_PLUS] = ACTIONS(25),
    [anon_sym_STAR] = ACTIONS(23),
    [anon_sym_SLASH] = ACTIONS(25),
    [anon_sym_CARET] = ACTIONS(23),
    [sym__glued] = ACTIONS(25),
    [sym_date] = ACTIONS(25),
    [sym_dms] = ACTIONS(23),
    [sym_number] = ACTIONS(25),
    [aux_sym_unit_token1] = ACTIONS(37),
    [aux_sym_unit_token2] = ACTIONS(37),
    [aux_sym_unit_token3] = ACTIONS(37),
    [aux_sym_unit_token4] = ACTIONS(37),
    [aux_sym_unit_token5] = ACTIONS(37),
    [aux_sym_unit_token6] = ACTIONS(37),
    [anon_sym_wavelengths] = ACTIONS(33),
    [anon_sym_wavelength] = ACTIONS(33),
    [aux_sym_unit_token7] = ACTIONS(33),
    [aux_sym_unit_token8] = ACTIONS(33),
    [aux_sym_unit_token9] = ACTIONS(37),
    [aux_sym_unit_token10] = ACTIONS(37),
    [aux_sym_unit_token11] = ACTIONS(37),
    [aux_sym_unit_token12] = ACTIONS(37),
    [anon_sym_ohm_DASHm] = ACTIONS(33),
    [aux_sym_unit_token13] = ACTIONS(37),
    [aux_sym_unit_token14] = ACTIONS(37),
    [aux_sym_unit_token15] = ACTIONS(37),
    [anon_sym_degC] = ACTIONS(33),
    [anon_sym_degF] = ACTIONS(33),
    [anon_sym_ohms] = ACTIONS(33),
    [aux_sym_unit_token16] = ACTIONS(37),
    [aux_sym_unit_token17] = ACTIONS(37),
    [aux_sym_unit_token18] = ACTIONS(37),
    [anon_sym_deg] = ACTIONS(33),
    [anon_sym_min] = ACTIONS(33),
    [anon_sym_ohm] = ACTIONS(33),
    [anon_sym_cm] = ACTIONS(33),
    [anon_sym_kV] = ACTIONS(33),
    [anon_sym_mi] = ACTIONS(33),
    [anon_sym_mm] = ACTIONS(33),
    [anon_sym_ms] = ACTIONS(33),
    [anon_sym_ns] = ACTIONS(33),
    [anon_sym_uV] = ACTIONS(33),
    [anon_sym_uW] = ACTIONS(33),
    [anon_sym_us] = ACTIONS(33),
    [anon_sym_yd] = ACTIONS(33),
    [anon_sym_u00b0C] = ACTIONS(37),
    [anon_sym_u00b0F] = ACTIONS(37),
    [anon_sym_u00b5V] = ACTIONS(37),
    [anon_sym_u00b5W] = ACTIONS(37),
    [anon_sym_u00b5s] = ACTIONS(37),
    [anon_sym_u03a9m] = ACTIONS(37),
    [anon_sym_u03bcV] = ACTIONS(37),
    [anon_sym_u03bcW] = ACTIONS(37),
    [anon_sym_u03bcs] = ACTIONS(37),
    [anon_sym_u2126m] = ACTIONS(37),
    [anon_sym_PERCENT] = ACTIONS(37),
    [anon_sym_A] = ACTIONS(33),
    [anon_sym_V] = ACTIONS(33),
    [anon_sym_W] = ACTIONS(33),
    [anon_sym_h] = ACTIONS(33),
    [anon_sym_s] = ACTIONS(33),
    [anon_sym_u00b0] = ACTIONS(33),
    [anon_sym_u03a9] = ACTIONS(33),
    [anon_sym_u03bb] = ACTIONS(37),
    [anon_sym_u2126] = ACTIONS(33),
    [sym_digit_name] = ACTIONS(25),
    [sym_string] = ACTIONS(23),
    [sym_comment] = ACTIONS(3),
  },
  [4] = {
    [sym_word] = STATE(5),
    [sym__value] = STATE(5),
    [sym_range] = STATE(5),
    [sym_tolerance] = STATE(5),
    [sym__expression] = STATE(11),
    [sym_parenthesized_expression] = STATE(13),
    [sym_negation] = STATE(13),
    [sym_binary_expression] = STATE(13),
    [sym_quantity] = STATE(13),
    [aux_sym__head_repeat1] = STATE(5),
    [ts_builtin_sym_end] = ACTIONS(39),
    [sym_name] = ACTIONS(7),
    [aux_sym__end_token1] = ACTIONS(39),
    [anon_sym_SEMI] = ACTIONS(39),
    [anon_sym_LBRACE] = ACTIONS(39),
    [anon_sym_RBRACE] = ACTIONS(39),
    [anon_sym_use] = ACTIONS(41),
    [anon_sym_band] = ACTIONS(41),
    [anon_sym_let] = ACTIONS(41),
    [anon_sym_cable] = ACTIONS(41),
    [anon_sym_connector] = ACTIONS(41),
    [anon_sym_device] = ACTIONS(41),
    [anon_sym_instrument] = ACTIONS(41),
    [anon_sym_session] = ACTIONS(41),
    [anon_sym_station] = ACTIONS(41),
    [anon_sym_chain] = ACTIONS(41),
    [anon_sym_licence] = ACTIONS(41),
    [anon_sym_rules] = ACTIONS(41),
    [anon_sym_link] = ACTIONS(41),
    [anon_sym_variant] = ACTIONS(41),
    [anon_sym_accept] = ACTIONS(41),
    [anon_sym_transmit] = ACTIONS(41),
    [anon_sym_receive] = ACTIONS(41),
    [anon_sym_impedance] = ACTIONS(41),
    [anon_sym_velocity] = ACTIONS(41),
    [anon_sym_loss] = ACTIONS(41),
    [anon_sym_construction] = ACTIONS(41),
    [anon_sym_wires] = ACTIONS(41),
    [anon_sym_valid] = ACTIONS(41),
    [anon_sym_accuracy] = ACTIONS(41),
    [anon_sym_rating] = ACTIONS(41),
    [anon_sym_voltage] = ACTIONS(41),
    [anon_sym_size] = ACTIONS(41),
    [anon_sym_conductor] = ACTIONS(41),
    [anon_sym_source] = ACTIONS(41),
    [anon_sym_recalled] = ACTIONS(41),
    [anon_sym_joins] = ACTIONS(41),
    [anon_sym_limit] = ACTIONS(41),
    [anon_sym_family] = ACTIONS(41),
    [anon_sym_bump] = ACTIONS(41),
    [anon_sym_return_DASHloss] = ACTIONS(41),
    [anon_sym_swr] = ACTIONS(41),
    [anon_sym_kind] = ACTIONS(41),
    [anon_sym_high] = ACTIONS(41),
    [anon_sym_low] = ACTIONS(41),
    [anon_sym_port] = ACTIONS(41),
    [anon_sym_from] = ACTIONS(41),
    [anon_sym_isolation] = ACTIONS(41),
    [anon_sym_ratio] = ACTIONS(41),
    [anon_sym_split] = ACTIONS(41),
    [anon_sym_tee] = ACTIONS(41),
    [anon_sym_reversed] = ACTIONS(41),
    [anon_sym_passes] = ACTIONS(41),
    [anon_sym_gain] = ACTIONS(41),
    [anon_sym_noise] = ACTIONS(41),
    [anon_sym_excess] = ACTIONS(41),
    [anon_sym_ways] = ACTIONS(41),
    [anon_sym_coupled] = ACTIONS(41),
    [anon_sym_calibrated] = ACTIONS(41),
    [anon_sym_scale] = ACTIONS(41),
    [anon_sym_resolution] = ACTIONS(41),
    [anon_sym_due] = ACTIONS(41),
    [anon_sym_linearity] = ACTIONS(41),
    [anon_sym_repeatability] = ACTIONS(41),
    [anon_sym_directivity] = ACTIONS(41),
    [anon_sym_certificate] = ACTIONS(41),
    [anon_sym_load] = ACTIONS(41),
    [anon_sym_read] = ACTIONS(41),
    [anon_sym_temperature] = ACTIONS(41),
    [anon_sym_generator] = ACTIONS(41),
    [anon_sym_drift] = ACTIONS(41),
    [anon_sym_piece] = ACTIONS(41),
    [anon_sym_readings] = ACTIONS(41),
    [anon_sym_resonance] = ACTIONS(41),
    [anon_sym_delay] = ACTIONS(41),
    [anon_sym_phase] = ACTIONS(41),
    [anon_sym_adapter] = ACTIONS(41),
    [anon_sym_position] = ACTIONS(41),
    [anon_sym_ground] = ACTIONS(41),
    [anon_sym_place] = ACTIONS(41),
    [anon_sym_under] = ACTIONS(41),
    [anon_sym_beside] = ACTIONS(41),
    [anon_sym_spot] = ACTIONS(41),
    [anon_sym_alone] = ACTIONS(41),
    [anon_sym_site_DASHnoise] = ACTIONS(41),
    [anon_sym_transmitter] = ACTIONS(41),
    [anon_sym_receiver] = ACTIONS(41),
    [anon_sym_transceiver] = ACTIONS(41),
    [anon_sym_run] = ACTIONS(41),
    [anon_sym_jumper] = ACTIONS(41),
    [anon_sym_tail] = ACTIONS(41),
    [anon_sym_pad] = ACTIONS(41),
    [anon_sym_filter] = ACTIONS(41),
    [anon_sym_isolator] = ACTIONS(41),
    [anon_sym_circulator] = ACTIONS(41),
    [anon_sym_protector] = ACTIONS(41),
    [anon_sym_switch] = ACTIONS(41),
    [anon_sym_coupler] = ACTIONS(41),
    [anon_sym_meter] = ACTIONS(41),
    [anon_sym_balun] = ACTIONS(41),
    [anon_sym_tuner] = ACTIONS(41),
    [anon_sym_duplexer] = ACTIONS(41),
    [anon_sym_diplexer] = ACTIONS(41),
    [anon_sym_combiner] = ACTIONS(41),
    [anon_sym_divider] = ACTIONS(41),
    [anon_sym_amplifier] = ACTIONS(41),
    [anon_sym_preamplifier] = ACTIONS(41),
    [anon_sym_antenna] = ACTIONS(41),
    [anon_sym_branches] = ACTIONS(41),
    [anon_sym_expect] = ACTIONS(41),
    [anon_sym_authority] = ACTIONS(41),
    [anon_sym_jurisdiction] = ACTIONS(41),
    [anon_sym_service] = ACTIONS(41),
    [anon_sym_edition] = ACTIONS(41),
    [anon_sym_dated] = ACTIONS(41),
    [anon_sym_until] = ACTIONS(41),
    [anon_sym_holder] = ACTIONS(41),
    [anon_sym_class] = ACTIONS(41),
    [anon_sym_ask] = ACTIONS(41),
    [anon_sym_threshold] = ACTIONS(41),
    [anon_sym_fixed] = ACTIONS(41),
    [anon_sym_condition] = ACTIONS(41),
    [anon_sym_reflection] = ACTIONS(41),
    [anon_sym_field] = ACTIONS(41),
    [anon_sym_hop] = ACTIONS(41),
    [anon_sym_profile] = ACTIONS(41),
    [anon_sym_distance] = ACTIONS(41),
    [anon_sym_k_DASHfactor] = ACTIONS(41),
    [anon_sym_need] = ACTIONS(41),
    [anon_sym_model] = ACTIONS(41),
    [anon_sym_coverage] = ACTIONS(41),
    [anon_sym_take] = ACTIONS(41),
    [anon_sym_put] = ACTIONS(41),
    [anon_sym_branch] = ACTIONS(41),
    [anon_sym_inner] = ACTIONS(41),
    [anon_sym_outer] = ACTIONS(41),
    [anon_sym_permittivity] = ACTIONS(41),
    [anon_sym_loss_DASHtangent] = ACTIONS(41),
    [anon_sym_strand] = ACTIONS(41),
    [anon_sym_strand_DASHdiameter] = ACTIONS(41),
    [anon_sym_braid] = ACTIONS(41),
    [anon_sym_resistivity] = ACTIONS(41),
    [anon_sym_inner_DASHresistivity] = ACTIONS(41),
    [anon_sym_outer_DASHresistivity] = ACTIONS(41),
    [anon_sym_diameter] = ACTIONS(41),
    [anon_sym_spacing] = ACTIONS(41),
    [anon_sym_baseline] = ACTIONS(41),
    [anon_sym_through] = ACTIONS(41),
    [anon_sym_open] = ACTIONS(41),
    [anon_sym_short] = ACTIONS(41),
    [anon_sym_equalise] = ACTIONS(41),
    [anon_sym_power] = ACTIONS(41),
    [anon_sym_mode] = ACTIONS(41),
    [anon_sym_duty] = ACTIONS(41),
    [anon_sym_keyed] = ACTIONS(41),
    [anon_sym_foldback] = ACTIONS(41),
    [anon_sym_bandwidth] = ACTIONS(41),
    [anon_sym_sensitivity] = ACTIONS(41),
    [anon_sym_blocking] = ACTIONS(41),
    [anon_sym_efficiency] = ACTIONS(41),
    [anon_sym_height] = ACTIONS(41),
    [anon_sym_pattern] = ACTIONS(41),
    [anon_sym_haat] = ACTIONS(41),
    [anon_sym_radius] = ACTIONS(41),
    [anon_sym_fails] = ACTIONS(41),
    [anon_sym_GHz] = ACTIONS(41),
    [anon_sym_Hz] = ACTIONS(41),
    [anon_sym_MHz] = ACTIONS(41),
    [anon_sym_above] = ACTIONS(41),
    [anon_sym_added] = ACTIONS(41),
    [anon_sym_after] = ACTIONS(41),
    [anon_sym_against] = ACTIONS(41),
    [anon_sym_agl] = ACTIONS(41),
    [anon_sym_allocated] = ACTIONS(41),
    [anon_sym_am] = ACTIONS(41),
    [anon_sym_ambient] = ACTIONS(41),
    [anon_sym_amsl] = ACTIONS(41),
    [anon_sym_apart] = ACTIONS(41),
    [anon_sym_at] = ACTIONS(41),
    [anon_sym_averaging] = ACTIONS(41),
    [anon_sym_below] = ACTIONS(41),
    [anon_sym_beyond] = ACTIONS(41),
    [anon_sym_blank] = ACTIONS(41),
    [anon_sym_bow] = ACTIONS(41),
    [anon_sym_bullington] = ACTIONS(41),
    [anon_sym_by] = ACTIONS(41),
    [anon_sym_carrier] = ACTIONS(41),
    [anon_sym_cascade] = ACTIONS(41),
    [anon_sym_city] = ACTIONS(41),
    [anon_sym_clad] = ACTIONS(41),
    [anon_sym_confidence] = ACTIONS(41),
    [anon_sym_corrected] = ACTIONS(41),
    [anon_sym_cw] = ACTIONS(41),
    [anon_sym_dB] = ACTIONS(41),
    [anon_sym_dBW] = ACTIONS(41),
    [anon_sym_dBd] = ACTIONS(41),
    [anon_sym_dBi] = ACTIONS(41),
    [anon_sym_dBm] = ACTIONS(41),
    [anon_sym_data] = ACTIONS(41),
    [anon_sym_date] = ACTIONS(41),
    [anon_sym_datum] = ACTIONS(41),
    [anon_sym_dc_DASHinput] = ACTIONS(41),
    [anon_sym_degrees] = ACTIONS(41),
    [anon_sym_delivered] = ACTIONS(41),
    [anon_sym_desense] = ACTIONS(41),
    [anon_sym_displayed] = ACTIONS(41),
    [anon_sym_dms] = ACTIONS(41),
    [anon_sym_down] = ACTIONS(41),
    [anon_sym_eirp] = ACTIONS(41),
    [anon_sym_elevation] = ACTIONS(41),
    [anon_sym_ends] = ACTIONS(41),
    [anon_sym_erp] = ACTIONS(41),
    [anon_sym_etrs89] = ACTIONS(41),
    [anon_sym_figure] = ACTIONS(41),
    [anon_sym_fm] = ACTIONS(41),
    [anon_sym_for] = ACTIONS(41),
    [anon_sym_forward] = ACTIONS(41),
    [anon_sym_free_DASHspace] = ACTIONS(41),
    [anon_sym_frequency] = ACTIONS(41),
    [anon_sym_ft] = ACTIONS(41),
    [anon_sym_full] = ACTIONS(41),
    [anon_sym_guess] = ACTIONS(41),
    [anon_sym_hata_DASHopen] = ACTIONS(41),
    [anon_sym_hata_DASHsuburban] = ACTIONS(41),
    [anon_sym_hata_DASHurban] = ACTIONS(41),
    [anon_sym_height_DASHamsl] = ACTIONS(41),
    [anon_sym_horizontal] = ACTIONS(41),
    [anon_sym_if] = ACTIONS(41),
    [anon_sym_in] = ACTIONS(41),
    [anon_sym_input] = ACTIONS(41),
    [anon_sym_instead] = ACTIONS(41),
    [anon_sym_k] = ACTIONS(41),
    [anon_sym_kHz] = ACTIONS(41),
    [anon_sym_kW] = ACTIONS(41),
    [anon_sym_km] = ACTIONS(41),
    [anon_sym_latitude] = ACTIONS(41),
    [anon_sym_longitude] = ACTIONS(41),
    [anon_sym_m] = ACTIONS(41),
    [anon_sym_mW] = ACTIONS(41),
    [anon_sym_maximum] = ACTIONS(41),
    [anon_sym_mean] = ACTIONS(41),
    [anon_sym_medium] = ACTIONS(41),
    [anon_sym_nad27] = ACTIONS(41),
    [anon_sym_nad83] = ACTIONS(41),
    [anon_sym_net] = ACTIONS(41),
    [anon_sym_no] = ACTIONS(41),
    [anon_sym_nominal] = ACTIONS(41),
    [anon_sym_occupational] = ACTIONS(41),
    [anon_sym_of] = ACTIONS(41),
    [anon_sym_offset] = ACTIONS(41),
    [anon_sym_on] = ACTIONS(41),
    [anon_sym_one_DASHedge] = ACTIONS(41),
    [anon_sym_out] = ACTIONS(41),
    [anon_sym_output] = ACTIONS(41),
    [anon_sym_over] = ACTIONS(41),
    [anon_sym_pep] = ACTIONS(41),
    [anon_sym_per] = ACTIONS(41),
    [anon_sym_places] = ACTIONS(41),
    [anon_sym_public] = ACTIONS(41),
    [anon_sym_quiet_DASHrural] = ACTIONS(41),
    [anon_sym_quieting] = ACTIONS(41),
    [anon_sym_rated] = ACTIONS(41),
    [anon_sym_reactance] = ACTIONS(41),
    [anon_sym_reading] = ACTIONS(41),
    [anon_sym_realized] = ACTIONS(41),
    [anon_sym_receive_DASHfrequency] = ACTIONS(41),
    [anon_sym_receive_DASHloss] = ACTIONS(41),
    [anon_sym_reference] = ACTIONS(41),
    [anon_sym_reflected] = ACTIONS(41),
    [anon_sym_rejects] = ACTIONS(41),
    [anon_sym_residential] = ACTIONS(41),
    [anon_sym_rural] = ACTIONS(41),
    [anon_sym_series] = ACTIONS(41),
    [anon_sym_shared] = ACTIONS(41),
    [anon_sym_sheet] = ACTIONS(41),
    [anon_sym_shunt] = ACTIONS(41),
    [anon_sym_sinad] = ACTIONS(41),
    [anon_sym_since] = ACTIONS(41),
    [anon_sym_snr] = ACTIONS(41),
    [anon_sym_spread] = ACTIONS(41),
    [anon_sym_ssb] = ACTIONS(41),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(41),
    [anon_sym_then] = ACTIONS(41),
    [anon_sym_title] = ACTIONS(41),
    [anon_sym_to] = ACTIONS(41),
    [anon_sym_total] = ACTIONS(41),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(41),
    [anon_sym_two_DASHray] = ACTIONS(41),
    [anon_sym_typical] = ACTIONS(41),
    [anon_sym_up] = ACTIONS(41),
    [anon_sym_vertical] = ACTIONS(41),
    [anon_sym_way] = ACTIONS(41),
    [anon_sym_wet] = ACTIONS(41),
    [anon_sym_wgs84] = ACTIONS(41),
    [anon_sym_with] = ACTIONS(41),
    [anon_sym_within] = ACTIONS(41),
    [anon_sym_yes] = ACTIONS(41),
    [anon_sym_COMMA] = ACTIONS(43),
    [anon_sym_EQ] = ACTIONS(43),
    [anon_sym_LPAREN] = ACTIONS(15),
    [anon_sym_DASH] = ACTIONS(17),
    [anon_sym_u2212] = ACTIONS(17),
    [anon_sym_u2013] = ACTIONS(17),
    [sym__glued] = ACTIONS(19),
    [sym_date] = ACTIONS(45),
    [sym_dms] = ACTIONS(43),
    [sym_number] = ACTIONS(21),
    [sym_digit_name] = ACTIONS(7),
    [sym_string] = ACTIONS(43),
    [sym_comment] = ACTIONS(3),
  },
  [5] = {
    [sym_word] = STATE(6),
    [sym__value] = STATE(6),
    [sym_range] = STATE(6),
    [sym_tolerance] = STATE(6),
    [sym__expression] = STATE(11),
    [sym_parenthesized_expression] = STATE(13),
    [sym_negation] = STATE(13),
    [sym_binary_expression] = STATE(13),
    [sym_quantity] = STATE(13),
    [aux_sym__head_repeat1] = STATE(6),
    [ts_builtin_sym_end] = ACTIONS(47),
    [sym_name] = ACTIONS(7),
    [aux_sym__end_token1] = ACTIONS(47),
    [anon_sym_SEMI] = ACTIONS(47),
    [anon_sym_LBRACE] = ACTIONS(47),
    [anon_sym_RBRACE] = ACTIONS(47),
    [anon_sym_use] = ACTIONS(41),
    [anon_sym_band] = ACTIONS(41),
    [anon_sym_let] = ACTIONS(41),
    [anon_sym_cable] = ACTIONS(41),
    [anon_sym_connector] = ACTIONS(41),
    [anon_sym_device] = ACTIONS(41),
    [anon_sym_instrument] = ACTIONS(41),
    [anon_sym_session] = ACTIONS(41),
    [anon_sym_station] = ACTIONS(41),
    [anon_sym_chain] = ACTIONS(41),
    [anon_sym_licence] = ACTIONS(41),
    [anon_sym_rules] = ACTIONS(41),
    [anon_sym_link] = ACTIONS(41),
    [anon_sym_variant] = ACTIONS(41),
    [anon_sym_accept] = ACTIONS(41),
    [anon_sym_transmit] = ACTIONS(41),
    [anon_sym_receive] = ACTIONS(41),
    [anon_sym_impedance] = ACTIONS(41),
    [anon_sym_velocity] = ACTIONS(41),
    [anon_sym_loss] = ACTIONS(41),
    [anon_sym_construction] = ACTIONS(41),
    [anon_sym_wires] = ACTIONS(41),
    [anon_sym_valid] = ACTIONS(41),
    [anon_sym_accuracy] = ACTIONS(41),
    [anon_sym_rating] = ACTIONS(41),
    [anon_sym_voltage] = ACTIONS(41),
    [anon_sym_size] = ACTIONS(41),
    [anon_sym_conductor] = ACTIONS(41),
    [anon_sym_source] = ACTIONS(41),
    [anon_sym_recalled] = ACTIONS(41),
    [anon_sym_joins] = ACTIONS(41),
    [anon_sym_limit] = ACTIONS(41),
    [anon_sym_family] = ACTIONS(41),
    [anon_sym_bump] = ACTIONS(41),
    [anon_sym_return_DASHloss] = ACTIONS(41),
    [anon_sym_swr] = ACTIONS(41),
    [anon_sym_kind] = ACTIONS(41),
    [anon_sym_high] = ACTIONS(41),
    [anon_sym_low] = ACTIONS(41),
    [anon_sym_port] = ACTIONS(41),
    [anon_sym_from] = ACTIONS(41),
    [anon_sym_isolation] = ACTIONS(41),
    [anon_sym_ratio] = ACTIONS(41),
    [anon_sym_split] = ACTIONS(41),
    [anon_sym_tee] = ACTIONS(41),
    [anon_sym_reversed] = ACTIONS(41),
    [anon_sym_passes] = ACTIONS(41),
    [anon_sym_gain] = ACTIONS(41),
    [anon_sym_noise] = ACTIONS(41),
    [anon_sym_excess] = ACTIONS(41),
    [anon_sym_ways] = ACTIONS(41),
    [anon_sym_coupled] = ACTIONS(41),
    [anon_sym_calibrated] = ACTIONS(41),
    [anon_sym_scale] = ACTIONS(41),
    [anon_sym_resolution] = ACTIONS(41),
    [anon_sym_due] = ACTIONS(41),
    [anon_sym_linearity] = ACTIONS(41),
    [anon_sym_repeatability] = ACTIONS(41),
    [anon_sym_directivity] = ACTIONS(41),
    [anon_sym_certificate] = ACTIONS(41),
    [anon_sym_load] = ACTIONS(41),
    [anon_sym_read] = ACTIONS(41),
    [anon_sym_temperature] = ACTIONS(41),
    [anon_sym_generator] = ACTIONS(41),
    [anon_sym_drift] = ACTIONS(41),
    [anon_sym_piece] = ACTIONS(41),
    [anon_sym_readings] = ACTIONS(41),
    [anon_sym_resonance] = ACTIONS(41),
    [anon_sym_delay] = ACTIONS(41),
    [anon_sym_phase] = ACTIONS(41),
    [anon_sym_adapter] = ACTIONS(41),
    [anon_sym_position] = ACTIONS(41),
    [anon_sym_ground] = ACTIONS(41),
    [anon_sym_place] = ACTIONS(41),
    [anon_sym_under] = ACTIONS(41),
    [anon_sym_beside] = ACTIONS(41),
    [anon_sym_spot] = ACTIONS(41),
    [anon_sym_alone] = ACTIONS(41),
    [anon_sym_site_DASHnoise] = ACTIONS(41),
    [anon_sym_transmitter] = ACTIONS(41),
    [anon_sym_receiver] = ACTIONS(41),
    [anon_sym_transceiver] = ACTIONS(41),
    [anon_sym_run] = ACTIONS(41),
    [anon_sym_jumper] = ACTIONS(41),
    [anon_sym_tail] = ACTIONS(41),
    [anon_sym_pad] = ACTIONS(41),
    [anon_sym_filter] = ACTIONS(41),
    [anon_sym_isolator] = ACTIONS(41),
    [anon_sym_circulator] = ACTIONS(41),
    [anon_sym_protector] = ACTIONS(41),
    [anon_sym_switch] = ACTIONS(41),
    [anon_sym_coupler] = ACTIONS(41),
    [anon_sym_meter] = ACTIONS(41),
    [anon_sym_balun] = ACTIONS(41),
    [anon_sym_tuner] = ACTIONS(41),
    [anon_sym_duplexer] = ACTIONS(41),
    [anon_sym_diplexer] = ACTIONS(41),
    [anon_sym_combiner] = ACTIONS(41),
    [anon_sym_divider] = ACTIONS(41),
    [anon_sym_amplifier] = ACTIONS(41),
    [anon_sym_preamplifier] = ACTIONS(41),
    [anon_sym_antenna] = ACTIONS(41),
    [anon_sym_branches] = ACTIONS(41),
    [anon_sym_expect] = ACTIONS(41),
    [anon_sym_authority] = ACTIONS(41),
    [anon_sym_jurisdiction] = ACTIONS(41),
    [anon_sym_service] = ACTIONS(41),
    [anon_sym_edition] = ACTIONS(41),
    [anon_sym_dated] = ACTIONS(41),
    [anon_sym_until] = ACTIONS(41),
    [anon_sym_holder] = ACTIONS(41),
    [anon_sym_class] = ACTIONS(41),
    [anon_sym_ask] = ACTIONS(41),
    [anon_sym_threshold] = ACTIONS(41),
    [anon_sym_fixed] = ACTIONS(41),
    [anon_sym_condition] = ACTIONS(41),
    [anon_sym_reflection] = ACTIONS(41),
    [anon_sym_field] = ACTIONS(41),
    [anon_sym_hop] = ACTIONS(41),
    [anon_sym_profile] = ACTIONS(41),
    [anon_sym_distance] = ACTIONS(41),
    [anon_sym_k_DASHfactor] = ACTIONS(41),
    [anon_sym_need] = ACTIONS(41),
    [anon_sym_model] = ACTIONS(41),
    [anon_sym_coverage] = ACTIONS(41),
    [anon_sym_take] = ACTIONS(41),
    [anon_sym_put] = ACTIONS(41),
    [anon_sym_branch] = ACTIONS(41),
    [anon_sym_inner] = ACTIONS(41),
    [anon_sym_outer] = ACTIONS(41),
    [anon_sym_permittivity] = ACTIONS(41),
    [anon_sym_loss_DASHtangent] = ACTIONS(41),
    [anon_sym_strand] = ACTIONS(41),
    [anon_sym_strand_DASHdiameter] = ACTIONS(41),
    [anon_sym_braid] = ACTIONS(41),
    [anon_sym_resistivity] = ACTIONS(41),
    [anon_sym_inner_DASHresistivity] = ACTIONS(41),
    [anon_sym_outer_DASHresistivity] = ACTIONS(41),
    [anon_sym_diameter] = ACTIONS(41),
    [anon_sym_spacing] = ACTIONS(41),
    [anon_sym_baseline] = ACTIONS(41),
    [anon_sym_through] = ACTIONS(41),
    [anon_sym_open] = ACTIONS(41),
    [anon_sym_short] = ACTIONS(41),
    [anon_sym_equalise] = ACTIONS(41),
    [anon_sym_power] = ACTIONS(41),
    [anon_sym_mode] = ACTIONS(41),
    [anon_sym_duty] = ACTIONS(41),
    [anon_sym_keyed] = ACTIONS(41),
    [anon_sym_foldback] = ACTIONS(41),
    [anon_sym_bandwidth] = ACTIONS(41),
    [anon_sym_sensitivity] = ACTIONS(41),
    [anon_sym_blocking] = ACTIONS(41),
    [anon_sym_efficiency] = ACTIONS(41),
    [anon_sym_height] = ACTIONS(41),
    [anon_sym_pattern] = ACTIONS(41),
    [anon_sym_haat] = ACTIONS(41),
    [anon_sym_radius] = ACTIONS(41),
    [anon_sym_fails] = ACTIONS(41),
    [anon_sym_GHz] = ACTIONS(41),
    [anon_sym_Hz] = ACTIONS(41),
    [anon_sym_MHz] = ACTIONS(41),
    [anon_sym_above] = ACTIONS(41),
    [anon_sym_added] = ACTIONS(41),
    [anon_sym_after] = ACTIONS(41),
    [anon_sym_against] = ACTIONS(41),
    [anon_sym_agl] = ACTIONS(41),
    [anon_sym_allocated] = ACTIONS(41),
    [anon_sym_am] = ACTIONS(41),
    [anon_sym_ambient] = ACTIONS(41),
    [anon_sym_amsl] = ACTIONS(41),
    [anon_sym_apart] = ACTIONS(41),
    [anon_sym_at] = ACTIONS(41),
    [anon_sym_averaging] = ACTIONS(41),
    [anon_sym_below] = ACTIONS(41),
    [anon_sym_beyond] = ACTIONS(41),
    [anon_sym_blank] = ACTIONS(41),
    [anon_sym_bow] = ACTIONS(41),
    [anon_sym_bullington] = ACTIONS(41),
    [anon_sym_by] = ACTIONS(41),
    [anon_sym_carrier] = ACTIONS(41),
    [anon_sym_cascade] = ACTIONS(41),
    [anon_sym_city] = ACTIONS(41),
    [anon_sym_clad] = ACTIONS(41),
    [anon_sym_confidence] = ACTIONS(41),
    [anon_sym_corrected] = ACTIONS(41),
    [anon_sym_cw] = ACTIONS(41),
    [anon_sym_dB] = ACTIONS(41),
    [anon_sym_dBW] = ACTIONS(41),
    [anon_sym_dBd] = ACTIONS(41),
    [anon_sym_dBi] = ACTIONS(41),
    [anon_sym_dBm] = ACTIONS(41),
    [anon_sym_data] = ACTIONS(41),
    [anon_sym_date] = ACTIONS(41),
    [anon_sym_datum] = ACTIONS(41),
    [anon_sym_dc_DASHinput] = ACTIONS(41),
    [anon_sym_degrees] = ACTIONS(41),
    [anon_sym_delivered] = ACTIONS(41),
    [anon_sym_desense] = ACTIONS(41),
    [anon_sym_displayed] = ACTIONS(41),
    [anon_sym_dms] = ACTIONS(41),
    [anon_sym_down] = ACTIONS(41),
    [anon_sym_eirp] = ACTIONS(41),
    [anon_sym_elevation] = ACTIONS(41),
    [anon_sym_ends] = ACTIONS(41),
    [anon_sym_erp] = ACTIONS(41),
    [anon_sym_etrs89] = ACTIONS(41),
    [anon_sym_figure] = ACTIONS(41),
    [anon_sym_fm] = ACTIONS(41),
    [anon_sym_for] = ACTIONS(41),
    [anon_sym_forward] = ACTIONS(41),
    [anon_sym_free_DASHspace] = ACTIONS(41),
    [anon_sym_frequency] = ACTIONS(41),
    [anon_sym_ft] = ACTIONS(41),
    [anon_sym_full] = ACTIONS(41),
    [anon_sym_guess] = ACTIONS(41),
    [anon_sym_hata_DASHopen] = ACTIONS(41),
    [anon_sym_hata_DASHsuburban] = ACTIONS(41),
    [anon_sym_hata_DASHurban] = ACTIONS(41),
    [anon_sym_height_DASHamsl] = ACTIONS(41),
    [anon_sym_horizontal] = ACTIONS(41),
    [anon_sym_if] = ACTIONS(41),
    [anon_sym_in] = ACTIONS(41),
    [anon_sym_input] = ACTIONS(41),
    [anon_sym_instead] = ACTIONS(41),
    [anon_sym_k] = ACTIONS(41),
    [anon_sym_kHz] = ACTIONS(41),
    [anon_sym_kW] = ACTIONS(41),
    [anon_sym_km] = ACTIONS(41),
    [anon_sym_latitude] = ACTIONS(41),
    [anon_sym_longitude] = ACTIONS(41),
    [anon_sym_m] = ACTIONS(41),
    [anon_sym_mW] = ACTIONS(41),
    [anon_sym_maximum] = ACTIONS(41),
    [anon_sym_mean] = ACTIONS(41),
    [anon_sym_medium] = ACTIONS(41),
    [anon_sym_nad27] = ACTIONS(41),
    [anon_sym_nad83] = ACTIONS(41),
    [anon_sym_net] = ACTIONS(41),
    [anon_sym_no] = ACTIONS(41),
    [anon_sym_nominal] = ACTIONS(41),
    [anon_sym_occupational] = ACTIONS(41),
    [anon_sym_of] = ACTIONS(41),
    [anon_sym_offset] = ACTIONS(41),
    [anon_sym_on] = ACTIONS(41),
    [anon_sym_one_DASHedge] = ACTIONS(41),
    [anon_sym_out] = ACTIONS(41),
    [anon_sym_output] = ACTIONS(41),
    [anon_sym_over] = ACTIONS(41),
    [anon_sym_pep] = ACTIONS(41),
    [anon_sym_per] = ACTIONS(41),
    [anon_sym_places] = ACTIONS(41),
    [anon_sym_public] = ACTIONS(41),
    [anon_sym_quiet_DASHrural] = ACTIONS(41),
    [anon_sym_quieting] = ACTIONS(41),
    [anon_sym_rated] = ACTIONS(41),
    [anon_sym_reactance] = ACTIONS(41),
    [anon_sym_reading] = ACTIONS(41),
    [anon_sym_realized] = ACTIONS(41),
    [anon_sym_receive_DASHfrequency] = ACTIONS(41),
    [anon_sym_receive_DASHloss] = ACTIONS(41),
    [anon_sym_reference] = ACTIONS(41),
    [anon_sym_reflected] = ACTIONS(41),
    [anon_sym_rejects] = ACTIONS(41),
    [anon_sym_residential] = ACTIONS(41),
    [anon_sym_rural] = ACTIONS(41),
    [anon_sym_series] = ACTIONS(41),
    [anon_sym_shared] = ACTIONS(41),
    [anon_sym_sheet] = ACTIONS(41),
    [anon_sym_shunt] = ACTIONS(41),
    [anon_sym_sinad] = ACTIONS(41),
    [anon_sym_since] = ACTIONS(41),
    [anon_sym_snr] = ACTIONS(41),
    [anon_sym_spread] = ACTIONS(41),
    [anon_sym_ssb] = ACTIONS(41),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(41),
    [anon_sym_then] = ACTIONS(41),
    [anon_sym_title] = ACTIONS(41),
    [anon_sym_to] = ACTIONS(41),
    [anon_sym_total] = ACTIONS(41),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(41),
    [anon_sym_two_DASHray] = ACTIONS(41),
    [anon_sym_typical] = ACTIONS(41),
    [anon_sym_up] = ACTIONS(41),
    [anon_sym_vertical] = ACTIONS(41),
    [anon_sym_way] = ACTIONS(41),
    [anon_sym_wet] = ACTIONS(41),
    [anon_sym_wgs84] = ACTIONS(41),
    [anon_sym_with] = ACTIONS(41),
    [anon_sym_within] = ACTIONS(41),
    [anon_sym_yes] = ACTIONS(41),
    [anon_sym_COMMA] = ACTIONS(49),
    [anon_sym_EQ] = ACTIONS(49),
    [anon_sym_LPAREN] = ACTIONS(15),
    [anon_sym_DASH] = ACTIONS(17),
    [anon_sym_u2212] = ACTIONS(17),
    [anon_sym_u2013] = ACTIONS(17),
    [sym__glued] = ACTIONS(19),
    [sym_date] = ACTIONS(51),
    [sym_dms] = ACTIONS(49),
    [sym_number] = ACTIONS(21),
    [sym_digit_name] = ACTIONS(7),
    [sym_string] = ACTIONS(49),
    [sym_comment] = ACTIONS(3),
  },
  [6] = {
    [sym_word] = STATE(6),
    [sym__value] = STATE(6),
    [sym_range] = STATE(6),
    [sym_tolerance] = STATE(6),
    [sym__expression] = STATE(11),
    [sym_parenthesized_expression] = STATE(13),
    [sym_negation] = STATE(13),
    [sym_binary_expression] = STATE(13),
    [sym_quantity] = STATE(13),
    [aux_sym__head_repeat1] = STATE(6),
    [ts_builtin_sym_end] = ACTIONS(53),
    [sym_name] = ACTIONS(55),
    [aux_sym__end_token1] = ACTIONS(53),
    [anon_sym_SEMI] = ACTIONS(53),
    [anon_sym_LBRACE] = ACTIONS(53),
    [anon_sym_RBRACE] = ACTIONS(53),
    [anon_sym_use] = ACTIONS(58),
    [anon_sym_band] = ACTIONS(58),
    [anon_sym_let] = ACTIONS(58),
    [anon_sym_cable] = ACTIONS(58),
    [anon_sym_connector] = ACTIONS(58),
    [anon_sym_device] = ACTIONS(58),
    [anon_sym_instrument] = ACTIONS(58),
    [anon_sym_session] = ACTIONS(58),
    [anon_sym_station] = ACTIONS(58),
    [anon_sym_chain] = ACTIONS(58),
    [anon_sym_licence] = ACTIONS(58),
    [anon_sym_rules] = ACTIONS(58),
    [anon_sym_link] = ACTIONS(58),
    [anon_sym_variant] = ACTIONS(58),
    [anon_sym_accept] = ACTIONS(58),
    [anon_sym_transmit] = ACTIONS(58),
    [anon_sym_receive] = ACTIONS(58),
    [anon_sym_impedance] = ACTIONS(58),
    [anon_sym_velocity] = ACTIONS(58),
    [anon_sym_loss] = ACTIONS(58),
    [anon_sym_construction] = ACTIONS(58),
    [anon_sym_wires] = ACTIONS(58),
    [anon_sym_valid] = ACTIONS(58),
    [anon_sym_accuracy] = ACTIONS(58),
    [anon_sym_rating] = ACTIONS(58),
    [anon_sym_voltage] = ACTIONS(58),
    [anon_sym_size] = ACTIONS(58),
    [anon_sym_conductor] = ACTIONS(58),
    [anon_sym_source] = ACTIONS(58),
    [anon_sym_recalled] = ACTIONS(58),
    [anon_sym_joins] = ACTIONS(58),
    [anon_sym_limit] = ACTIONS(58),
    [anon_sym_family] = ACTIONS(58),
    [anon_sym_bump] = ACTIONS(58),
    [anon_sym_return_DASHloss] = ACTIONS(58),
    [anon_sym_swr] = ACTIONS(58),
    [anon_sym_kind] = ACTIONS(58),
    [anon_sym_high] = ACTIONS(58),
    [anon_sym_low] = ACTIONS(58),
    [anon_sym_port] = ACTIONS(58),
    [anon_sym_from] = ACTIONS(58),
    [anon_sym_isolation] = ACTIONS(58),
    [anon_sym_ratio] = ACTIONS(58),
    [anon_sym_split] = ACTIONS(58),
    [anon_sym_tee] = ACTIONS(58),
    [anon_sym_reversed] = ACTIONS(58),
    [anon_sym_passes] = ACTIONS(58),
    [anon_sym_gain] = ACTIONS(58),
    [anon_sym_noise] = ACTIONS(58),
    [anon_sym_excess] = ACTIONS(58),
    [anon_sym_ways] = ACTIONS(58),
    [anon_sym_coupled] = ACTIONS(58),
    [anon_sym_calibrated] = ACTIONS(58),
    [anon_sym_scale] = ACTIONS(58),
    [anon_sym_resolution] = ACTIONS(58),
    [anon_sym_due] = ACTIONS(58),
    [anon_sym_linearity] = ACTIONS(58),
    [anon_sym_repeatability] = ACTIONS(58),
    [anon_sym_directivity] = ACTIONS(58),
    [anon_sym_certificate] = ACTIONS(58),
    [anon_sym_load] = ACTIONS(58),
    [anon_sym_read] = ACTIONS(58),
    [anon_sym_temperature] = ACTIONS(58),
    [anon_sym_generator] = ACTIONS(58),
    [anon_sym_drift] = ACTIONS(58),
    [anon_sym_piece] = ACTIONS(58),
    [anon_sym_readings] = ACTIONS(58),
    [anon_sym_resonance] = ACTIONS(58),
    [anon_sym_delay] = ACTIONS(58),
    [anon_sym_phase] = ACTIONS(58),
    [anon_sym_adapter] = ACTIONS(58),
    [anon_sym_position] = ACTIONS(58),
    [anon_sym_ground] = ACTIONS(58),
    [anon_sym_place] = ACTIONS(58),
    [anon_sym_under] = ACTIONS(58),
    [anon_sym_beside] = ACTIONS(58),
    [anon_sym_spot] = ACTIONS(58),
    [anon_sym_alone] = ACTIONS(58),
    [anon_sym_site_DASHnoise] = ACTIONS(58),
    [anon_sym_transmitter] = ACTIONS(58),
    [anon_sym_receiver] = ACTIONS(58),
    [anon_sym_transceiver] = ACTIONS(58),
    [anon_sym_run] = ACTIONS(58),
    [anon_sym_jumper] = ACTIONS(58),
    [anon_sym_tail] = ACTIONS(58),
    [anon_sym_pad] = ACTIONS(58),
    [anon_sym_filter] = ACTIONS(58),
    [anon_sym_isolator] = ACTIONS(58),
    [anon_sym_circulator] = ACTIONS(58),
    [anon_sym_protector] = ACTIONS(58),
    [anon_sym_switch] = ACTIONS(58),
    [anon_sym_coupler] = ACTIONS(58),
    [anon_sym_meter] = ACTIONS(58),
    [anon_sym_balun] = ACTIONS(58),
    [anon_sym_tuner] = ACTIONS(58),
    [anon_sym_duplexer] = ACTIONS(58),
    [anon_sym_diplexer] = ACTIONS(58),
    [anon_sym_combiner] = ACTIONS(58),
    [anon_sym_divider] = ACTIONS(58),
    [anon_sym_amplifier] = ACTIONS(58),
    [anon_sym_preamplifier] = ACTIONS(58),
    [anon_sym_antenna] = ACTIONS(58),
    [anon_sym_branches] = ACTIONS(58),
    [anon_sym_expect] = ACTIONS(58),
    [anon_sym_authority] = ACTIONS(58),
    [anon_sym_jurisdiction] = ACTIONS(58),
    [anon_sym_service] = ACTIONS(58),
    [anon_sym_edition] = ACTIONS(58),
    [anon_sym_dated] = ACTIONS(58),
    [anon_sym_until] = ACTIONS(58),
    [anon_sym_holder] = ACTIONS(58),
    [anon_sym_class] = ACTIONS(58),
    [anon_sym_ask] = ACTIONS(58),
    [anon_sym_threshold] = ACTIONS(58),
    [anon_sym_fixed] = ACTIONS(58),
    [anon_sym_condition] = ACTIONS(58),
    [anon_sym_reflection] = ACTIONS(58),
    [anon_sym_field] = ACTIONS(58),
    [anon_sym_hop] = ACTIONS(58),
    [anon_sym_profile] = ACTIONS(58),
    [anon_sym_distance] = ACTIONS(58),
    [anon_sym_k_DASHfactor] = ACTIONS(58),
    [anon_sym_need] = ACTIONS(58),
    [anon_sym_model] = ACTIONS(58),
    [anon_sym_coverage] = ACTIONS(58),
    [anon_sym_take] = ACTIONS(58),
    [anon_sym_put] = ACTIONS(58),
    [anon_sym_branch] = ACTIONS(58),
    [anon_sym_inner] = ACTIONS(58),
    [anon_sym_outer] = ACTIONS(58),
    [anon_sym_permittivity] = ACTIONS(58),
    [anon_sym_loss_DASHtangent] = ACTIONS(58),
    [anon_sym_strand] = ACTIONS(58),
    [anon_sym_strand_DASHdiameter] = ACTIONS(58),
    [anon_sym_braid] = ACTIONS(58),
    [anon_sym_resistivity] = ACTIONS(58),
    [anon_sym_inner_DASHresistivity] = ACTIONS(58),
    [anon_sym_outer_DASHresistivity] = ACTIONS(58),
    [anon_sym_diameter] = ACTIONS(58),
    [anon_sym_spacing] = ACTIONS(58),
    [anon_sym_baseline] = ACTIONS(58),
    [anon_sym_through] = ACTIONS(58),
    [anon_sym_open] = ACTIONS(58),
    [anon_sym_short] = ACTIONS(58),
    [anon_sym_equalise] = ACTIONS(58),
    [anon_sym_power] = ACTIONS(58),
    [anon_sym_mode] = ACTIONS(58),
    [anon_sym_duty] = ACTIONS(58),
    [anon_sym_keyed] = ACTIONS(58),
    [anon_sym_foldback] = ACTIONS(58),
    [anon_sym_bandwidth] = ACTIONS(58),
    [anon_sym_sensitivity] = ACTIONS(58),
    [anon_sym_blocking] = ACTIONS(58),
    [anon_sym_efficiency] = ACTIONS(58),
    [anon_sym_height] = ACTIONS(58),
    [anon_sym_pattern] = ACTIONS(58),
    [anon_sym_haat] = ACTIONS(58),
    [anon_sym_radius] = ACTIONS(58),
    [anon_sym_fails] = ACTIONS(58),
    [anon_sym_GHz] = ACTIONS(58),
    [anon_sym_Hz] = ACTIONS(58),
    [anon_sym_MHz] = ACTIONS(58),
    [anon_sym_above] = ACTIONS(58),
    [anon_sym_added] = ACTIONS(58),
    [anon_sym_after] = ACTIONS(58),
    [anon_sym_against] = ACTIONS(58),
    [anon_sym_agl] = ACTIONS(58),
    [anon_sym_allocated] = ACTIONS(58),
    [anon_sym_am] = ACTIONS(58),
    [anon_sym_ambient] = ACTIONS(58),
    [anon_sym_amsl] = ACTIONS(58),
    [anon_sym_apart] = ACTIONS(58),
    [anon_sym_at] = ACTIONS(58),
    [anon_sym_averaging] = ACTIONS(58),
    [anon_sym_below] = ACTIONS(58),
    [anon_sym_beyond] = ACTIONS(58),
    [anon_sym_blank] = ACTIONS(58),
    [anon_sym_bow] = ACTIONS(58),
    [anon_sym_bullington] = ACTIONS(58),
    [anon_sym_by] = ACTIONS(58),
    [anon_sym_carrier] = ACTIONS(58),
    [anon_sym_cascade] = ACTIONS(58),
    [anon_sym_city] = ACTIONS(58),
    [anon_sym_clad] = ACTIONS(58),
    [anon_sym_confidence] = ACTIONS(58),
    [anon_sym_corrected] = ACTIONS(58),
    [anon_sym_cw] = ACTIONS(58),
    [anon_sym_dB] = ACTIONS(58),
    [anon_sym_dBW] = ACTIONS(58),
    [anon_sym_dBd] = ACTIONS(58),
    [anon_sym_dBi] = ACTIONS(58),
    [anon_sym_dBm] = ACTIONS(58),
    [anon_sym_data] = ACTIONS(58),
    [anon_sym_date] = ACTIONS(58),
    [anon_sym_datum] = ACTIONS(58),
    [anon_sym_dc_DASHinput] = ACTIONS(58),
    [anon_sym_degrees] = ACTIONS(58),
    [anon_sym_delivered] = ACTIONS(58),
    [anon_sym_desense] = ACTIONS(58),
    [anon_sym_displayed] = ACTIONS(58),
    [anon_sym_dms] = ACTIONS(58),
    [anon_sym_down] = ACTIONS(58),
    [anon_sym_eirp] = ACTIONS(58),
    [anon_sym_elevation] = ACTIONS(58),
    [anon_sym_ends] = ACTIONS(58),
    [anon_sym_erp] = ACTIONS(58),
    [anon_sym_etrs89] = ACTIONS(58),
    [anon_sym_figure] = ACTIONS(58),
    [anon_sym_fm] = ACTIONS(58),
    [anon_sym_for] = ACTIONS(58),
    [anon_sym_forward] = ACTIONS(58),
    [anon_sym_free_DASHspace] = ACTIONS(58),
    [anon_sym_frequency] = ACTIONS(58),
    [anon_sym_ft] = ACTIONS(58),
    [anon_sym_full] = ACTIONS(58),
    [anon_sym_guess] = ACTIONS(58),
    [anon_sym_hata_DASHopen] = ACTIONS(58),
    [anon_sym_hata_DASHsuburban] = ACTIONS(58),
    [anon_sym_hata_DASHurban] = ACTIONS(58),
    [anon_sym_height_DASHamsl] = ACTIONS(58),
    [anon_sym_horizontal] = ACTIONS(58),
    [anon_sym_if] = ACTIONS(58),
    [anon_sym_in] = ACTIONS(58),
    [anon_sym_input] = ACTIONS(58),
    [anon_sym_instead] = ACTIONS(58),
    [anon_sym_k] = ACTIONS(58),
    [anon_sym_kHz] = ACTIONS(58),
    [anon_sym_kW] = ACTIONS(58),
    [anon_sym_km] = ACTIONS(58),
    [anon_sym_latitude] = ACTIONS(58),
    [anon_sym_longitude] = ACTIONS(58),
    [anon_sym_m] = ACTIONS(58),
    [anon_sym_mW] = ACTIONS(58),
    [anon_sym_maximum] = ACTIONS(58),
    [anon_sym_mean] = ACTIONS(58),
    [anon_sym_medium] = ACTIONS(58),
    [anon_sym_nad27] = ACTIONS(58),
    [anon_sym_nad83] = ACTIONS(58),
    [anon_sym_net] = ACTIONS(58),
    [anon_sym_no] = ACTIONS(58),
    [anon_sym_nominal] = ACTIONS(58),
    [anon_sym_occupational] = ACTIONS(58),
    [anon_sym_of] = ACTIONS(58),
    [anon_sym_offset] = ACTIONS(58),
    [anon_sym_on] = ACTIONS(58),
    [anon_sym_one_DASHedge] = ACTIONS(58),
    [anon_sym_out] = ACTIONS(58),
    [anon_sym_output] = ACTIONS(58),
    [anon_sym_over] = ACTIONS(58),
    [anon_sym_pep] = ACTIONS(58),
    [anon_sym_per] = ACTIONS(58),
    [anon_sym_places] = ACTIONS(58),
    [anon_sym_public] = ACTIONS(58),
    [anon_sym_quiet_DASHrural] = ACTIONS(58),
    [anon_sym_quieting] = ACTIONS(58),
    [anon_sym_rated] = ACTIONS(58),
    [anon_sym_reactance] = ACTIONS(58),
    [anon_sym_reading] = ACTIONS(58),
    [anon_sym_realized] = ACTIONS(58),
    [anon_sym_receive_DASHfrequency] = ACTIONS(58),
    [anon_sym_receive_DASHloss] = ACTIONS(58),
    [anon_sym_reference] = ACTIONS(58),
    [anon_sym_reflected] = ACTIONS(58),
    [anon_sym_rejects] = ACTIONS(58),
    [anon_sym_residential] = ACTIONS(58),
    [anon_sym_rural] = ACTIONS(58),
    [anon_sym_series] = ACTIONS(58),
    [anon_sym_shared] = ACTIONS(58),
    [anon_sym_sheet] = ACTIONS(58),
    [anon_sym_shunt] = ACTIONS(58),
    [anon_sym_sinad] = ACTIONS(58),
    [anon_sym_since] = ACTIONS(58),
    [anon_sym_snr] = ACTIONS(58),
    [anon_sym_spread] = ACTIONS(58),
    [anon_sym_ssb] = ACTIONS(58),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(58),
    [anon_sym_then] = ACTIONS(58),
    [anon_sym_title] = ACTIONS(58),
    [anon_sym_to] = ACTIONS(58),
    [anon_sym_total] = ACTIONS(58),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(58),
    [anon_sym_two_DASHray] = ACTIONS(58),
    [anon_sym_typical] = ACTIONS(58),
    [anon_sym_up] = ACTIONS(58),
    [anon_sym_vertical] = ACTIONS(58),
    [anon_sym_way] = ACTIONS(58),
    [anon_sym_wet] = ACTIONS(58),
    [anon_sym_wgs84] = ACTIONS(58),
    [anon_sym_with] = ACTIONS(58),
    [anon_sym_within] = ACTIONS(58),
    [anon_sym_yes] = ACTIONS(58),
    [anon_sym_COMMA] = ACTIONS(61),
    [anon_sym_EQ] = ACTIONS(61),
    [anon_sym_LPAREN] = ACTIONS(64),
    [anon_sym_DASH] = ACTIONS(67),
    [anon_sym_u2212] = ACTIONS(67),
    [anon_sym_u2013] = ACTIONS(67),
    [sym__glued] = ACTIONS(70),
    [sym_date] = ACTIONS(73),
    [sym_dms] = ACTIONS(61),
    [sym_number] = ACTIONS(76),
    [sym_digit_name] = ACTIONS(55),
    [sym_string] = ACTIONS(61),
    [sym_comment] = ACTIONS(3),
  },
  [7] = {
    [sym__line] = STATE(7),
    [sym__end] = STATE(7),
    [sym_statement] = STATE(69),
    [sym_block_statement] = STATE(7),
    [sym__head] = STATE(64),
    [sym_keyword] = STATE(4),
    [sym_only_word] = STATE(4),
    [sym__value] = STATE(4),
    [sym_range] = STATE(4),
    [sym_tolerance] = STATE(4),
    [sym__expression] = STATE(11),
    [sym_parenthesized_expression] = STATE(13),
    [sym_negation] = STATE(13),
    [sym_binary_expression] = STATE(13),
    [sym_quantity] = STATE(13),
    [aux_sym_source_file_repeat1] = STATE(7),
    [ts_builtin_sym_end] = ACTIONS(79),
    [sym_name] = ACTIONS(81),
    [aux_sym__end_token1] = ACTIONS(84),
    [anon_sym_SEMI] = ACTIONS(84),
    [anon_sym_RBRACE] = ACTIONS(79),
    [anon_sym_use] = ACTIONS(87),
    [anon_sym_band] = ACTIONS(87),
    [anon_sym_let] = ACTIONS(87),
    [anon_sym_cable] = ACTIONS(87),
    [anon_sym_connector] = ACTIONS(87),
    [anon_sym_device] = ACTIONS(87),
    [anon_sym_instrument] = ACTIONS(87),
    [anon_sym_session] = ACTIONS(87),
    [anon_sym_station] = ACTIONS(87),
    [anon_sym_chain] = ACTIONS(87),
    [anon_sym_licence] = ACTIONS(87),
    [anon_sym_rules] = ACTIONS(87),
    [anon_sym_link] = ACTIONS(87),
    [anon_sym_variant] = ACTIONS(87),
    [anon_sym_accept] = ACTIONS(87),
    [anon_sym_transmit] = ACTIONS(87),
    [anon_sym_receive] = ACTIONS(87),
    [anon_sym_impedance] = ACTIONS(87),
    [anon_sym_velocity] = ACTIONS(87),
    [anon_sym_loss] = ACTIONS(87),
    [anon_sym_construction] = ACTIONS(87),
    [anon_sym_wires] = ACTIONS(87),
    [anon_sym_valid] = ACTIONS(87),
    [anon_sym_accuracy] = ACTIONS(87),
    [anon_sym_rating] = ACTIONS(87),
    [anon_sym_voltage] = ACTIONS(87),
    [anon_sym_size] = ACTIONS(87),
    [anon_sym_conductor] = ACTIONS(87),
    [anon_sym_source] = ACTIONS(87),
    [anon_sym_recalled] = ACTIONS(87),
    [anon_sym_joins] = ACTIONS(87),
    [anon_sym_limit] = ACTIONS(87),
    [anon_sym_family] = ACTIONS(87),
    [anon_sym_bump] = ACTIONS(87),
    [anon_sym_return_DASHloss] = ACTIONS(87),
    [anon_sym_swr] = ACTIONS(87),
    [anon_sym_kind] = ACTIONS(87),
    [anon_sym_high] = ACTIONS(87),
    [anon_sym_low] = ACTIONS(87),
    [anon_sym_port] = ACTIONS(87),
    [anon_sym_from] = ACTIONS(87),
    [anon_sym_isolation] = ACTIONS(87),
    [anon_sym_ratio] = ACTIONS(87),
    [anon_sym_split] = ACTIONS(87),
    [anon_sym_tee] = ACTIONS(87),
    [anon_sym_reversed] = ACTIONS(87),
    [anon_sym_passes] = ACTIONS(87),
    [anon_sym_gain] = ACTIONS(87),
    [anon_sym_noise] = ACTIONS(87),
    [anon_sym_excess] = ACTIONS(87),
    [anon_sym_ways] = ACTIONS(87),
    [anon_sym_coupled] = ACTIONS(87),
    [anon_sym_calibrated] = ACTIONS(87),
    [anon_sym_scale] = ACTIONS(87),
    [anon_sym_resolution] = ACTIONS(87),
    [anon_sym_due] = ACTIONS(87),
    [anon_sym_linearity] = ACTIONS(87),
    [anon_sym_repeatability] = ACTIONS(87),
    [anon_sym_directivity] = ACTIONS(87),
    [anon_sym_certificate] = ACTIONS(87),
    [anon_sym_load] = ACTIONS(87),
    [anon_sym_read] = ACTIONS(87),
    [anon_sym_temperature] = ACTIONS(87),
    [anon_sym_generator] = ACTIONS(87),
    [anon_sym_drift] = ACTIONS(87),
    [anon_sym_piece] = ACTIONS(87),
    [anon_sym_readings] = ACTIONS(87),
    [anon_sym_resonance] = ACTIONS(87),
    [anon_sym_delay] = ACTIONS(87),
    [anon_sym_phase] = ACTIONS(87),
    [anon_sym_adapter] = ACTIONS(87),
    [anon_sym_position] = ACTIONS(87),
    [anon_sym_ground] = ACTIONS(87),
    [anon_sym_place] = ACTIONS(87),
    [anon_sym_under] = ACTIONS(87),
    [anon_sym_beside] = ACTIONS(87),
    [anon_sym_spot] = ACTIONS(87),
    [anon_sym_alone] = ACTIONS(87),
    [anon_sym_site_DASHnoise] = ACTIONS(87),
    [anon_sym_transmitter] = ACTIONS(87),
    [anon_sym_receiver] = ACTIONS(87),
    [anon_sym_transceiver] = ACTIONS(87),
    [anon_sym_run] = ACTIONS(87),
    [anon_sym_jumper] = ACTIONS(87),
    [anon_sym_tail] = ACTIONS(87),
    [anon_sym_pad] = ACTIONS(87),
    [anon_sym_filter] = ACTIONS(87),
    [anon_sym_isolator] = ACTIONS(87),
    [anon_sym_circulator] = ACTIONS(87),
    [anon_sym_protector] = ACTIONS(87),
    [anon_sym_switch] = ACTIONS(87),
    [anon_sym_coupler] = ACTIONS(87),
    [anon_sym_meter] = ACTIONS(87),
    [anon_sym_balun] = ACTIONS(87),
    [anon_sym_tuner] = ACTIONS(87),
    [anon_sym_duplexer] = ACTIONS(87),
    [anon_sym_diplexer] = ACTIONS(87),
    [anon_sym_combiner] = ACTIONS(87),
    [anon_sym_divider] = ACTIONS(87),
    [anon_sym_amplifier] = ACTIONS(87),
    [anon_sym_preamplifier] = ACTIONS(87),
    [anon_sym_antenna] = ACTIONS(87),
    [anon_sym_branches] = ACTIONS(87),
    [anon_sym_expect] = ACTIONS(87),
    [anon_sym_authority] = ACTIONS(87),
    [anon_sym_jurisdiction] = ACTIONS(87),
    [anon_sym_service] = ACTIONS(87),
    [anon_sym_edition] = ACTIONS(87),
    [anon_sym_dated] = ACTIONS(87),
    [anon_sym_until] = ACTIONS(87),
    [anon_sym_holder] = ACTIONS(87),
    [anon_sym_class] = ACTIONS(87),
    [anon_sym_ask] = ACTIONS(87),
    [anon_sym_threshold] = ACTIONS(87),
    [anon_sym_fixed] = ACTIONS(87),
    [anon_sym_condition] = ACTIONS(87),
    [anon_sym_reflection] = ACTIONS(87),
    [anon_sym_field] = ACTIONS(87),
    [anon_sym_hop] = ACTIONS(87),
    [anon_sym_profile] = ACTIONS(87),
    [anon_sym_distance] = ACTIONS(87),
    [anon_sym_k_DASHfactor] = ACTIONS(87),
    [anon_sym_need] = ACTIONS(87),
    [anon_sym_model] = ACTIONS(87),
    [anon_sym_coverage] = ACTIONS(87),
    [anon_sym_take] = ACTIONS(87),
    [anon_sym_put] = ACTIONS(87),
    [anon_sym_branch] = ACTIONS(87),
    [anon_sym_inner] = ACTIONS(87),
    [anon_sym_outer] = ACTIONS(87),
    [anon_sym_permittivity] = ACTIONS(87),
    [anon_sym_loss_DASHtangent] = ACTIONS(87),
    [anon_sym_strand] = ACTIONS(87),
    [anon_sym_strand_DASHdiameter] = ACTIONS(87),
    [anon_sym_braid] = ACTIONS(87),
    [anon_sym_resistivity] = ACTIONS(87),
    [anon_sym_inner_DASHresistivity] = ACTIONS(87),
    [anon_sym_outer_DASHresistivity] = ACTIONS(87),
    [anon_sym_diameter] = ACTIONS(87),
    [anon_sym_spacing] = ACTIONS(87),
    [anon_sym_baseline] = ACTIONS(87),
    [anon_sym_through] = ACTIONS(87),
    [anon_sym_open] = ACTIONS(87),
    [anon_sym_short] = ACTIONS(87),
    [anon_sym_equalise] = ACTIONS(87),
    [anon_sym_power] = ACTIONS(87),
    [anon_sym_mode] = ACTIONS(87),
    [anon_sym_duty] = ACTIONS(87),
    [anon_sym_keyed] = ACTIONS(87),
    [anon_sym_foldback] = ACTIONS(87),
    [anon_sym_bandwidth] = ACTIONS(87),
    [anon_sym_sensitivity] = ACTIONS(87),
    [anon_sym_blocking] = ACTIONS(87),
    [anon_sym_efficiency] = ACTIONS(87),
    [anon_sym_height] = ACTIONS(87),
    [anon_sym_pattern] = ACTIONS(87),
    [anon_sym_haat] = ACTIONS(87),
    [anon_sym_radius] = ACTIONS(87),
    [anon_sym_fails] = ACTIONS(87),
    [anon_sym_GHz] = ACTIONS(90),
    [anon_sym_Hz] = ACTIONS(90),
    [anon_sym_MHz] = ACTIONS(90),
    [anon_sym_above] = ACTIONS(90),
    [anon_sym_added] = ACTIONS(90),
    [anon_sym_after] = ACTIONS(90),
    [anon_sym_against] = ACTIONS(90),
    [anon_sym_agl] = ACTIONS(90),
    [anon_sym_allocated] = ACTIONS(90),
    [anon_sym_am] = ACTIONS(90),
    [anon_sym_ambient] = ACTIONS(90),
    [anon_sym_amsl] = ACTIONS(90),
    [anon_sym_apart] = ACTIONS(90),
    [anon_sym_at] = ACTIONS(90),
    [anon_sym_averaging] = ACTIONS(90),
    [anon_sym_below] = ACTIONS(90),
    [anon_sym_beyond] = ACTIONS(90),
    [anon_sym_blank] = ACTIONS(90),
    [anon_sym_bow] = ACTIONS(90),
    [anon_sym_bullington] = ACTIONS(90),
    [anon_sym_by] = ACTIONS(90),
    [anon_sym_carrier] = ACTIONS(90),
    [anon_sym_cascade] = ACTIONS(90),
    [anon_sym_city] = ACTIONS(90),
    [anon_sym_clad] = ACTIONS(90),
    [anon_sym_confidence] = ACTIONS(90),
    [anon_sym_corrected] = ACTIONS(90),
    [anon_sym_cw] = ACTIONS(90),
    [anon_sym_dB] = ACTIONS(90),
    [anon_sym_dBW] = ACTIONS(90),
    [anon_sym_dBd] = ACTIONS(90),
    [anon_sym_dBi] = ACTIONS(90),
    [anon_sym_dBm] = ACTIONS(90),
    [anon_sym_data] = ACTIONS(90),
    [anon_sym_date] = ACTIONS(90),
    [anon_sym_datum] = ACTIONS(90),
    [anon_sym_dc_DASHinput] = ACTIONS(90),
    [anon_sym_degrees] = ACTIONS(90),
    [anon_sym_delivered] = ACTIONS(90),
    [anon_sym_desense] = ACTIONS(90),
    [anon_sym_displayed] = ACTIONS(90),
    [anon_sym_dms] = ACTIONS(90),
    [anon_sym_down] = ACTIONS(90),
    [anon_sym_eirp] = ACTIONS(90),
    [anon_sym_elevation] = ACTIONS(90),
    [anon_sym_ends] = ACTIONS(90),
    [anon_sym_erp] = ACTIONS(90),
    [anon_sym_etrs89] = ACTIONS(90),
    [anon_sym_figure] = ACTIONS(90),
    [anon_sym_fm] = ACTIONS(90),
    [anon_sym_for] = ACTIONS(90),
    [anon_sym_forward] = ACTIONS(90),
    [anon_sym_free_DASHspace] = ACTIONS(90),
    [anon_sym_frequency] = ACTIONS(90),
    [anon_sym_ft] = ACTIONS(90),
    [anon_sym_full] = ACTIONS(90),
    [anon_sym_guess] = ACTIONS(90),
    [anon_sym_hata_DASHopen] = ACTIONS(90),
    [anon_sym_hata_DASHsuburban] = ACTIONS(90),
    [anon_sym_hata_DASHurban] = ACTIONS(90),
    [anon_sym_height_DASHamsl] = ACTIONS(90),
    [anon_sym_horizontal] = ACTIONS(90),
    [anon_sym_if] = ACTIONS(90),
    [anon_sym_in] = ACTIONS(90),
    [anon_sym_input] = ACTIONS(90),
    [anon_sym_instead] = ACTIONS(90),
    [anon_sym_k] = ACTIONS(90),
    [anon_sym_kHz] = ACTIONS(90),
    [anon_sym_kW] = ACTIONS(90),
    [anon_sym_km] = ACTIONS(90),
    [anon_sym_latitude] = ACTIONS(90),
    [anon_sym_longitude] = ACTIONS(90),
    [anon_sym_m] = ACTIONS(90),
    [anon_sym_mW] = ACTIONS(90),
    [anon_sym_maximum] = ACTIONS(90),
    [anon_sym_mean] = ACTIONS(90),
    [anon_sym_medium] = ACTIONS(90),
    [anon_sym_nad27] = ACTIONS(90),
    [anon_sym_nad83] = ACTIONS(90),
    [anon_sym_net] = ACTIONS(90),
    [anon_sym_no] = ACTIONS(90),
    [anon_sym_nominal] = ACTIONS(90),
    [anon_sym_occupational] = ACTIONS(90),
    [anon_sym_of] = ACTIONS(90),
    [anon_sym_offset] = ACTIONS(90),
    [anon_sym_on] = ACTIONS(90),
    [anon_sym_one_DASHedge] = ACTIONS(90),
    [anon_sym_out] = ACTIONS(90),
    [anon_sym_output] = ACTIONS(90),
    [anon_sym_over] = ACTIONS(90),
    [anon_sym_pep] = ACTIONS(90),
    [anon_sym_per] = ACTIONS(90),
    [anon_sym_places] = ACTIONS(90),
    [anon_sym_public] = ACTIONS(90),
    [anon_sym_quiet_DASHrural] = ACTIONS(90),
    [anon_sym_quieting] = ACTIONS(90),
    [anon_sym_rated] = ACTIONS(90),
    [anon_sym_reactance] = ACTIONS(90),
    [anon_sym_reading] = ACTIONS(90),
    [anon_sym_realized] = ACTIONS(90),
    [anon_sym_receive_DASHfrequency] = ACTIONS(90),
    [anon_sym_receive_DASHloss] = ACTIONS(90),
    [anon_sym_reference] = ACTIONS(90),
    [anon_sym_reflected] = ACTIONS(90),
    [anon_sym_rejects] = ACTIONS(90),
    [anon_sym_residential] = ACTIONS(90),
    [anon_sym_rural] = ACTIONS(90),
    [anon_sym_series] = ACTIONS(90),
    [anon_sym_shared] = ACTIONS(90),
    [anon_sym_sheet] = ACTIONS(90),
    [anon_sym_shunt] = ACTIONS(90),
    [anon_sym_sinad] = ACTIONS(90),
    [anon_sym_since] = ACTIONS(90),
    [anon_sym_snr] = ACTIONS(90),
    [anon_sym_spread] = ACTIONS(90),
    [anon_sym_ssb] = ACTIONS(90),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(90),
    [anon_sym_then] = ACTIONS(90),
    [anon_sym_title] = ACTIONS(90),
    [anon_sym_to] = ACTIONS(90),
    [anon_sym_total] = ACTIONS(90),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(90),
    [anon_sym_two_DASHray] = ACTIONS(90),
    [anon_sym_typical] = ACTIONS(90),
    [anon_sym_up] = ACTIONS(90),
    [anon_sym_vertical] = ACTIONS(90),
    [anon_sym_way] = ACTIONS(90),
    [anon_sym_wet] = ACTIONS(90),
    [anon_sym_wgs84] = ACTIONS(90),
    [anon_sym_with] = ACTIONS(90),
    [anon_sym_within] = ACTIONS(90),
    [anon_sym_yes] = ACTIONS(90),
    [anon_sym_LPAREN] = ACTIONS(93),
    [anon_sym_DASH] = ACTIONS(96),
    [anon_sym_u2212] = ACTIONS(96),
    [anon_sym_u2013] = ACTIONS(96),
    [sym__glued] = ACTIONS(99),
    [sym_number] = ACTIONS(102),
    [sym_digit_name] = ACTIONS(81),
    [sym_comment] = ACTIONS(3),
  },
  [8] = {
    [sym__line] = STATE(7),
    [sym__end] = STATE(7),
    [sym_statement] = STATE(66),
    [sym_block_statement] = STATE(7),
    [sym__head] = STATE(64),
    [sym_keyword] = STATE(4),
    [sym_only_word] = STATE(4),
    [sym__value] = STATE(4),
    [sym_range] = STATE(4),
    [sym_tolerance] = STATE(4),
    [sym__expression] = STATE(11),
    [sym_parenthesized_expression] = STATE(13),
    [sym_negation] = STATE(13),
    [sym_binary_expression] = STATE(13),
    [sym_quantity] = STATE(13),
    [aux_sym_source_file_repeat1] = STATE(7),
    [ts_builtin_sym_end] = ACTIONS(105),
    [sym_name] = ACTIONS(7),
    [aux_sym__end_token1] = ACTIONS(107),
    [anon_sym_SEMI] = ACTIONS(107),
    [anon_sym_use] = ACTIONS(11),
    [anon_sym_band] = ACTIONS(11),
    [anon_sym_let] = ACTIONS(11),
    [anon_sym_cable] = ACTIONS(11),
    [anon_sym_connector] = ACTIONS(11),
    [anon_sym_device] = ACTIONS(11),
    [anon_sym_instrument] = ACTIONS(11),
    [anon_sym_session] = ACTIONS(11),
    [anon_sym_station] = ACTIONS(11),
    [anon_sym_chain] = ACTIONS(11),
    [anon_sym_licence] = ACTIONS(11),
    [anon_sym_rules] = ACTIONS(11),
    [anon_sym_link] = ACTIONS(11),
    [anon_sym_variant] = ACTIONS(11),
    [anon_sym_accept] = ACTIONS(11),
    [anon_sym_transmit] = ACTIONS(11),
    [anon_sym_receive] = ACTIONS(11),
    [anon_sym_impedance] = ACTIONS(11),
    [anon_sym_velocity] = ACTIONS(11),
    [anon_sym_loss] = ACTIONS(11),
    [anon_sym_construction] = ACTIONS(11),
    [anon_sym_wires] = ACTIONS(11),
    [anon_sym_valid] = ACTIONS(11),
    [anon_sym_accuracy] = ACTIONS(11),
    [anon_sym_rating] = ACTIONS(11),
    [anon_sym_voltage] = ACTIONS(11),
    [anon_sym_size] = ACTIONS(11),
    [anon_sym_conductor] = ACTIONS(11),
    [anon_sym_source] = ACTIONS(11),
    [anon_sym_recalled] = ACTIONS(11),
    [anon_sym_joins] = ACTIONS(11),
    [anon_sym_limit] = ACTIONS(11),
    [anon_sym_family] = ACTIONS(11),
    [anon_sym_bump] = ACTIONS(11),
    [anon_sym_return_DASHloss] = ACTIONS(11),
    [anon_sym_swr] = ACTIONS(11),
    [anon_sym_kind] = ACTIONS(11),
    [anon_sym_high] = ACTIONS(11),
    [anon_sym_low] = ACTIONS(11),
    [anon_sym_port] = ACTIONS(11),
    [anon_sym_from] = ACTIONS(11),
    [anon_sym_isolation] = ACTIONS(11),
    [anon_sym_ratio] = ACTIONS(11),
    [anon_sym_split] = ACTIONS(11),
    [anon_sym_tee] = ACTIONS(11),
    [anon_sym_reversed] = ACTIONS(11),
    [anon_sym_passes] = ACTIONS(11),
    [anon_sym_gain] = ACTIONS(11),
    [anon_sym_noise] = ACTIONS(11),
    [anon_sym_excess] = ACTIONS(11),
    [anon_sym_ways] = ACTIONS(11),
    [anon_sym_coupled] = ACTIONS(11),
    [anon_sym_calibrated] = ACTIONS(11),
    [anon_sym_scale] = ACTIONS(11),
    [anon_sym_resolution] = ACTIONS(11),
    [anon_sym_due] = ACTIONS(11),
    [anon_sym_linearity] = ACTIONS(11),
    [anon_sym_repeatability] = ACTIONS(11),
    [anon_sym_directivity] = ACTIONS(11),
    [anon_sym_certificate] = ACTIONS(11),
    [anon_sym_load] = ACTIONS(11),
    [anon_sym_read] = ACTIONS(11),
    [anon_sym_temperature] = ACTIONS(11),
    [anon_sym_generator] = ACTIONS(11),
    [anon_sym_drift] = ACTIONS(11),
    [anon_sym_piece] = ACTIONS(11),
    [anon_sym_readings] = ACTIONS(11),
    [anon_sym_resonance] = ACTIONS(11),
    [anon_sym_delay] = ACTIONS(11),
    [anon_sym_phase] = ACTIONS(11),
    [anon_sym_adapter] = ACTIONS(11),
    [anon_sym_position] = ACTIONS(11),
    [anon_sym_ground] = ACTIONS(11),
    [anon_sym_place] = ACTIONS(11),
    [anon_sym_under] = ACTIONS(11),
    [anon_sym_beside] = ACTIONS(11),
    [anon_sym_spot] = ACTIONS(11),
    [anon_sym_alone] = ACTIONS(11),
    [anon_sym_site_DASHnoise] = ACTIONS(11),
    [anon_sym_transmitter] = ACTIONS(11),
    [anon_sym_receiver] = ACTIONS(11),
    [anon_sym_transceiver] = ACTIONS(11),
    [anon_sym_run] = ACTIONS(11),
    [anon_sym_jumper] = ACTIONS(11),
    [anon_sym_tail] = ACTIONS(11),
    [anon_sym_pad] = ACTIONS(11),
    [anon_sym_filter] = ACTIONS(11),
    [anon_sym_isolator] = ACTIONS(11),
    [anon_sym_circulator] = ACTIONS(11),
    [anon_sym_protector] = ACTIONS(11),
    [anon_sym_switch] = ACTIONS(11),
    [anon_sym_coupler] = ACTIONS(11),
    [anon_sym_meter] = ACTIONS(11),
    [anon_sym_balun] = ACTIONS(11),
    [anon_sym_tuner] = ACTIONS(11),
    [anon_sym_duplexer] = ACTIONS(11),
    [anon_sym_diplexer] = ACTIONS(11),
    [anon_sym_combiner] = ACTIONS(11),
    [anon_sym_divider] = ACTIONS(11),
    [anon_sym_amplifier] = ACTIONS(11),
    [anon_sym_preamplifier] = ACTIONS(11),
    [anon_sym_antenna] = ACTIONS(11),
    [anon_sym_branches] = ACTIONS(11),
    [anon_sym_expect] = ACTIONS(11),
    [anon_sym_authority] = ACTIONS(11),
    [anon_sym_jurisdiction] = ACTIONS(11),
    [anon_sym_service] = ACTIONS(11),
    [anon_sym_edition] = ACTIONS(11),
    [anon_sym_dated] = ACTIONS(11),
    [anon_sym_until] = ACTIONS(11),
    [anon_sym_holder] = ACTIONS(11),
    [anon_sym_class] = ACTIONS(11),
    [anon_sym_ask] = ACTIONS(11),
    [anon_sym_threshold] = ACTIONS(11),
    [anon_sym_fixed] = ACTIONS(11),
    [anon_sym_condition] = ACTIONS(11),
    [anon_sym_reflection] = ACTIONS(11),
    [anon_sym_field] = ACTIONS(11),
    [anon_sym_hop] = ACTIONS(11),
    [anon_sym_profile] = ACTIONS(11),
    [anon_sym_distance] = ACTIONS(11),
    [anon_sym_k_DASHfactor] = ACTIONS(11),
    [anon_sym_need] = ACTIONS(11),
    [anon_sym_model] = ACTIONS(11),
    [anon_sym_coverage] = ACTIONS(11),
    [anon_sym_take] = ACTIONS(11),
    [anon_sym_put] = ACTIONS(11),
    [anon_sym_branch] = ACTIONS(11),
    [anon_sym_inner] = ACTIONS(11),
    [anon_sym_outer] = ACTIONS(11),
    [anon_sym_permittivity] = ACTIONS(11),
    [anon_sym_loss_DASHtangent] = ACTIONS(11),
    [anon_sym_strand] = ACTIONS(11),
    [anon_sym_strand_DASHdiameter] = ACTIONS(11),
    [anon_sym_braid] = ACTIONS(11),
    [anon_sym_resistivity] = ACTIONS(11),
    [anon_sym_inner_DASHresistivity] = ACTIONS(11),
    [anon_sym_outer_DASHresistivity] = ACTIONS(11),
    [anon_sym_diameter] = ACTIONS(11),
    [anon_sym_spacing] = ACTIONS(11),
    [anon_sym_baseline] = ACTIONS(11),
    [anon_sym_through] = ACTIONS(11),
    [anon_sym_open] = ACTIONS(11),
    [anon_sym_short] = ACTIONS(11),
    [anon_sym_equalise] = ACTIONS(11),
    [anon_sym_power] = ACTIONS(11),
    [anon_sym_mode] = ACTIONS(11),
    [anon_sym_duty] = ACTIONS(11),
    [anon_sym_keyed] = ACTIONS(11),
    [anon_sym_foldback] = ACTIONS(11),
    [anon_sym_bandwidth] = ACTIONS(11),
    [anon_sym_sensitivity] = ACTIONS(11),
    [anon_sym_blocking] = ACTIONS(11),
    [anon_sym_efficiency] = ACTIONS(11),
    [anon_sym_height] = ACTIONS(11),
    [anon_sym_pattern] = ACTIONS(11),
    [anon_sym_haat] = ACTIONS(11),
    [anon_sym_radius] = ACTIONS(11),
    [anon_sym_fails] = ACTIONS(11),
    [anon_sym_GHz] = ACTIONS(13),
    [anon_sym_Hz] = ACTIONS(13),
    [anon_sym_MHz] = ACTIONS(13),
    [anon_sym_above] = ACTIONS(13),
    [anon_sym_added] = ACTIONS(13),
    [anon_sym_after] = ACTIONS(13),
    [anon_sym_against] = ACTIONS(13),
    [anon_sym_agl] = ACTIONS(13),
    [anon_sym_allocated] = ACTIONS(13),
    [anon_sym_am] = ACTIONS(13),
    [anon_sym_ambient] = ACTIONS(13),
    [anon_sym_amsl] = ACTIONS(13),
    [anon_sym_apart] = ACTIONS(13),
    [anon_sym_at] = ACTIONS(13),
    [anon_sym_averaging] = ACTIONS(13),
    [anon_sym_below] = ACTIONS(13),
    [anon_sym_beyond] = ACTIONS(13),
    [anon_sym_blank] = ACTIONS(13),
    [anon_sym_bow] = ACTIONS(13),
    [anon_sym_bullington] = ACTIONS(13),
    [anon_sym_by] = ACTIONS(13),
    [anon_sym_carrier] = ACTIONS(13),
    [anon_sym_cascade] = ACTIONS(13),
    [anon_sym_city] = ACTIONS(13),
    [anon_sym_clad] = ACTIONS(13),
    [anon_sym_confidence] = ACTIONS(13),
    [anon_sym_corrected] = ACTIONS(13),
    [anon_sym_cw] = ACTIONS(13),
    [anon_sym_dB] = ACTIONS(13),
    [anon_sym_dBW] = ACTIONS(13),
    [anon_sym_dBd] = ACTIONS(13),
    [anon_sym_dBi] = ACTIONS(13),
    [anon_sym_dBm] = ACTIONS(13),
    [anon_sym_data] = ACTIONS(13),
    [anon_sym_date] = ACTIONS(13),
    [anon_sym_datum] = ACTIONS(13),
    [anon_sym_dc_DASHinput] = ACTIONS(13),
    [anon_sym_degrees] = ACTIONS(13),
    [anon_sym_delivered] = ACTIONS(13),
    [anon_sym_desense] = ACTIONS(13),
    [anon_sym_displayed] = ACTIONS(13),
    [anon_sym_dms] = ACTIONS(13),
    [anon_sym_down] = ACTIONS(13),
    [anon_sym_eirp] = ACTIONS(13),
    [anon_sym_elevation] = ACTIONS(13),
    [anon_sym_ends] = ACTIONS(13),
    [anon_sym_erp] = ACTIONS(13),
    [anon_sym_etrs89] = ACTIONS(13),
    [anon_sym_figure] = ACTIONS(13),
    [anon_sym_fm] = ACTIONS(13),
    [anon_sym_for] = ACTIONS(13),
    [anon_sym_forward] = ACTIONS(13),
    [anon_sym_free_DASHspace] = ACTIONS(13),
    [anon_sym_frequency] = ACTIONS(13),
    [anon_sym_ft] = ACTIONS(13),
    [anon_sym_full] = ACTIONS(13),
    [anon_sym_guess] = ACTIONS(13),
    [anon_sym_hata_DASHopen] = ACTIONS(13),
    [anon_sym_hata_DASHsuburban] = ACTIONS(13),
    [anon_sym_hata_DASHurban] = ACTIONS(13),
    [anon_sym_height_DASHamsl] = ACTIONS(13),
    [anon_sym_horizontal] = ACTIONS(13),
    [anon_sym_if] = ACTIONS(13),
    [anon_sym_in] = ACTIONS(13),
    [anon_sym_input] = ACTIONS(13),
    [anon_sym_instead] = ACTIONS(13),
    [anon_sym_k] = ACTIONS(13),
    [anon_sym_kHz] = ACTIONS(13),
    [anon_sym_kW] = ACTIONS(13),
    [anon_sym_km] = ACTIONS(13),
    [anon_sym_latitude] = ACTIONS(13),
    [anon_sym_longitude] = ACTIONS(13),
    [anon_sym_m] = ACTIONS(13),
    [anon_sym_mW] = ACTIONS(13),
    [anon_sym_maximum] = ACTIONS(13),
    [anon_sym_mean] = ACTIONS(13),
    [anon_sym_medium] = ACTIONS(13),
    [anon_sym_nad27] = ACTIONS(13),
    [anon_sym_nad83] = ACTIONS(13),
    [anon_sym_net] = ACTIONS(13),
    [anon_sym_no] = ACTIONS(13),
    [anon_sym_nominal] = ACTIONS(13),
    [anon_sym_occupational] = ACTIONS(13),
    [anon_sym_of] = ACTIONS(13),
    [anon_sym_offset] = ACTIONS(13),
    [anon_sym_on] = ACTIONS(13),
    [anon_sym_one_DASHedge] = ACTIONS(13),
    [anon_sym_out] = ACTIONS(13),
    [anon_sym_output] = ACTIONS(13),
    [anon_sym_over] = ACTIONS(13),
    [anon_sym_pep] = ACTIONS(13),
    [anon_sym_per] = ACTIONS(13),
    [anon_sym_places] = ACTIONS(13),
    [anon_sym_public] = ACTIONS(13),
    [anon_sym_quiet_DASHrural] = ACTIONS(13),
    [anon_sym_quieting] = ACTIONS(13),
    [anon_sym_rated] = ACTIONS(13),
    [anon_sym_reactance] = ACTIONS(13),
    [anon_sym_reading] = ACTIONS(13),
    [anon_sym_realized] = ACTIONS(13),
    [anon_sym_receive_DASHfrequency] = ACTIONS(13),
    [anon_sym_receive_DASHloss] = ACTIONS(13),
    [anon_sym_reference] = ACTIONS(13),
    [anon_sym_reflected] = ACTIONS(13),
    [anon_sym_rejects] = ACTIONS(13),
    [anon_sym_residential] = ACTIONS(13),
    [anon_sym_rural] = ACTIONS(13),
    [anon_sym_series] = ACTIONS(13),
    [anon_sym_shared] = ACTIONS(13),
    [anon_sym_sheet] = ACTIONS(13),
    [anon_sym_shunt] = ACTIONS(13),
    [anon_sym_sinad] = ACTIONS(13),
    [anon_sym_since] = ACTIONS(13),
    [anon_sym_snr] = ACTIONS(13),
    [anon_sym_spread] = ACTIONS(13),
    [anon_sym_ssb] = ACTIONS(13),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(13),
    [anon_sym_then] = ACTIONS(13),
    [anon_sym_title] = ACTIONS(13),
    [anon_sym_to] = ACTIONS(13),
    [anon_sym_total] = ACTIONS(13),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(13),
    [anon_sym_two_DASHray] = ACTIONS(13),
    [anon_sym_typical] = ACTIONS(13),
    [anon_sym_up] = ACTIONS(13),
    [anon_sym_vertical] = ACTIONS(13),
    [anon_sym_way] = ACTIONS(13),
    [anon_sym_wet] = ACTIONS(13),
    [anon_sym_wgs84] = ACTIONS(13),
    [anon_sym_with] = ACTIONS(13),
    [anon_sym_within] = ACTIONS(13),
    [anon_sym_yes] = ACTIONS(13),
    [anon_sym_LPAREN] = ACTIONS(15),
    [anon_sym_DASH] = ACTIONS(17),
    [anon_sym_u2212] = ACTIONS(17),
    [anon_sym_u2013] = ACTIONS(17),
    [sym__glued] = ACTIONS(19),
    [sym_number] = ACTIONS(21),
    [sym_digit_name] = ACTIONS(7),
    [sym_comment] = ACTIONS(3),
  },
  [9] = {
    [sym__line] = STATE(10),
    [sym__end] = STATE(10),
    [sym_statement] = STATE(67),
    [sym_block_statement] = STATE(10),
    [sym__head] = STATE(64),
    [sym_keyword] = STATE(4),
    [sym_only_word] = STATE(4),
    [sym__value] = STATE(4),
    [sym_range] = STATE(4),
    [sym_tolerance] = STATE(4),
    [sym__expression] = STATE(11),
    [sym_parenthesized_expression] = STATE(13),
    [sym_negation] = STATE(13),
    [sym_binary_expression] = STATE(13),
    [sym_quantity] = STATE(13),
    [aux_sym_source_file_repeat1] = STATE(10),
    [sym_name] = ACTIONS(7),
    [aux_sym__end_token1] = ACTIONS(109),
    [anon_sym_SEMI] = ACTIONS(109),
    [anon_sym_RBRACE] = ACTIONS(111),
    [anon_sym_use] = ACTIONS(11),
    [anon_sym_band] = ACTIONS(11),
    [anon_sym_let] = ACTIONS(11),
    [anon_sym_cable] = ACTIONS(11),
    [anon_sym_connector] = ACTIONS(11),
    [anon_sym_device] = ACTIONS(11),
    [anon_sym_instrument] = ACTIONS(11),
    [anon_sym_session] = ACTIONS(11),
    [anon_sym_station] = ACTIONS(11),
    [anon_sym_chain] = ACTIONS(11),
    [anon_sym_licence] = ACTIONS(11),
    [anon_sym_rules] = ACTIONS(11),
    [anon_sym_link] = ACTIONS(11),
    [anon_sym_variant] = ACTIONS(11),
    [anon_sym_accept] = ACTIONS(11),
    [anon_sym_transmit] = ACTIONS(11),
    [anon_sym_receive] = ACTIONS(11),
    [anon_sym_impedance] = ACTIONS(11),
    [anon_sym_velocity] = ACTIONS(11),
    [anon_sym_loss] = ACTIONS(11),
    [anon_sym_construction] = ACTIONS(11),
    [anon_sym_wires] = ACTIONS(11),
    [anon_sym_valid] = ACTIONS(11),
    [anon_sym_accuracy] = ACTIONS(11),
    [anon_sym_rating] = ACTIONS(11),
    [anon_sym_voltage] = ACTIONS(11),
    [anon_sym_size] = ACTIONS(11),
    [anon_sym_conductor] = ACTIONS(11),
    [anon_sym_source] = ACTIONS(11),
    [anon_sym_recalled] = ACTIONS(11),
    [anon_sym_joins] = ACTIONS(11),
    [anon_sym_limit] = ACTIONS(11),
    [anon_sym_family] = ACTIONS(11),
    [anon_sym_bump] = ACTIONS(11),
    [anon_sym_return_DASHloss] = ACTIONS(11),
    [anon_sym_swr] = ACTIONS(11),
    [anon_sym_kind] = ACTIONS(11),
    [anon_sym_high] = ACTIONS(11),
    [anon_sym_low] = ACTIONS(11),
    [anon_sym_port] = ACTIONS(11),
    [anon_sym_from] = ACTIONS(11),
    [anon_sym_isolation] = ACTIONS(11),
    [anon_sym_ratio] = ACTIONS(11),
    [anon_sym_split] = ACTIONS(11),
    [anon_sym_tee] = ACTIONS(11),
    [anon_sym_reversed] = ACTIONS(11),
    [anon_sym_passes] = ACTIONS(11),
    [anon_sym_gain] = ACTIONS(11),
    [anon_sym_noise] = ACTIONS(11),
    [anon_sym_excess] = ACTIONS(11),
    [anon_sym_ways] = ACTIONS(11),
    [anon_sym_coupled] = ACTIONS(11),
    [anon_sym_calibrated] = ACTIONS(11),
    [anon_sym_scale] = ACTIONS(11),
    [anon_sym_resolution] = ACTIONS(11),
    [anon_sym_due] = ACTIONS(11),
    [anon_sym_linearity] = ACTIONS(11),
    [anon_sym_repeatability] = ACTIONS(11),
    [anon_sym_directivity] = ACTIONS(11),
    [anon_sym_certificate] = ACTIONS(11),
    [anon_sym_load] = ACTIONS(11),
    [anon_sym_read] = ACTIONS(11),
    [anon_sym_temperature] = ACTIONS(11),
    [anon_sym_generator] = ACTIONS(11),
    [anon_sym_drift] = ACTIONS(11),
    [anon_sym_piece] = ACTIONS(11),
    [anon_sym_readings] = ACTIONS(11),
    [anon_sym_resonance] = ACTIONS(11),
    [anon_sym_delay] = ACTIONS(11),
    [anon_sym_phase] = ACTIONS(11),
    [anon_sym_adapter] = ACTIONS(11),
    [anon_sym_position] = ACTIONS(11),
    [anon_sym_ground] = ACTIONS(11),
    [anon_sym_place] = ACTIONS(11),
    [anon_sym_under] = ACTIONS(11),
    [anon_sym_beside] = ACTIONS(11),
    [anon_sym_spot] = ACTIONS(11),
    [anon_sym_alone] = ACTIONS(11),
    [anon_sym_site_DASHnoise] = ACTIONS(11),
    [anon_sym_transmitter] = ACTIONS(11),
    [anon_sym_receiver] = ACTIONS(11),
    [anon_sym_transceiver] = ACTIONS(11),
    [anon_sym_run] = ACTIONS(11),
    [anon_sym_jumper] = ACTIONS(11),
    [anon_sym_tail] = ACTIONS(11),
    [anon_sym_pad] = ACTIONS(11),
    [anon_sym_filter] = ACTIONS(11),
    [anon_sym_isolator] = ACTIONS(11),
    [anon_sym_circulator] = ACTIONS(11),
    [anon_sym_protector] = ACTIONS(11),
    [anon_sym_switch] = ACTIONS(11),
    [anon_sym_coupler] = ACTIONS(11),
    [anon_sym_meter] = ACTIONS(11),
    [anon_sym_balun] = ACTIONS(11),
    [anon_sym_tuner] = ACTIONS(11),
    [anon_sym_duplexer] = ACTIONS(11),
    [anon_sym_diplexer] = ACTIONS(11),
    [anon_sym_combiner] = ACTIONS(11),
    [anon_sym_divider] = ACTIONS(11),
    [anon_sym_amplifier] = ACTIONS(11),
    [anon_sym_preamplifier] = ACTIONS(11),
    [anon_sym_antenna] = ACTIONS(11),
    [anon_sym_branches] = ACTIONS(11),
    [anon_sym_expect] = ACTIONS(11),
    [anon_sym_authority] = ACTIONS(11),
    [anon_sym_jurisdiction] = ACTIONS(11),
    [anon_sym_service] = ACTIONS(11),
    [anon_sym_edition] = ACTIONS(11),
    [anon_sym_dated] = ACTIONS(11),
    [anon_sym_until] = ACTIONS(11),
    [anon_sym_holder] = ACTIONS(11),
    [anon_sym_class] = ACTIONS(11),
    [anon_sym_ask] = ACTIONS(11),
    [anon_sym_threshold] = ACTIONS(11),
    [anon_sym_fixed] = ACTIONS(11),
    [anon_sym_condition] = ACTIONS(11),
    [anon_sym_reflection] = ACTIONS(11),
    [anon_sym_field] = ACTIONS(11),
    [anon_sym_hop] = ACTIONS(11),
    [anon_sym_profile] = ACTIONS(11),
    [anon_sym_distance] = ACTIONS(11),
    [anon_sym_k_DASHfactor] = ACTIONS(11),
    [anon_sym_need] = ACTIONS(11),
    [anon_sym_model] = ACTIONS(11),
    [anon_sym_coverage] = ACTIONS(11),
    [anon_sym_take] = ACTIONS(11),
    [anon_sym_put] = ACTIONS(11),
    [anon_sym_branch] = ACTIONS(11),
    [anon_sym_inner] = ACTIONS(11),
    [anon_sym_outer] = ACTIONS(11),
    [anon_sym_permittivity] = ACTIONS(11),
    [anon_sym_loss_DASHtangent] = ACTIONS(11),
    [anon_sym_strand] = ACTIONS(11),
    [anon_sym_strand_DASHdiameter] = ACTIONS(11),
    [anon_sym_braid] = ACTIONS(11),
    [anon_sym_resistivity] = ACTIONS(11),
    [anon_sym_inner_DASHresistivity] = ACTIONS(11),
    [anon_sym_outer_DASHresistivity] = ACTIONS(11),
    [anon_sym_diameter] = ACTIONS(11),
    [anon_sym_spacing] = ACTIONS(11),
    [anon_sym_baseline] = ACTIONS(11),
    [anon_sym_through] = ACTIONS(11),
    [anon_sym_open] = ACTIONS(11),
    [anon_sym_short] = ACTIONS(11),
    [anon_sym_equalise] = ACTIONS(11),
    [anon_sym_power] = ACTIONS(11),
    [anon_sym_mode] = ACTIONS(11),
    [anon_sym_duty] = ACTIONS(11),
    [anon_sym_keyed] = ACTIONS(11),
    [anon_sym_foldback] = ACTIONS(11),
    [anon_sym_bandwidth] = ACTIONS(11),
    [anon_sym_sensitivity] = ACTIONS(11),
    [anon_sym_blocking] = ACTIONS(11),
    [anon_sym_efficiency] = ACTIONS(11),
    [anon_sym_height] = ACTIONS(11),
    [anon_sym_pattern] = ACTIONS(11),
    [anon_sym_haat] = ACTIONS(11),
    [anon_sym_radius] = ACTIONS(11),
    [anon_sym_fails] = ACTIONS(11),
    [anon_sym_GHz] = ACTIONS(13),
    [anon_sym_Hz] = ACTIONS(13),
    [anon_sym_MHz] = ACTIONS(13),
    [anon_sym_above] = ACTIONS(13),
    [anon_sym_added] = ACTIONS(13),
    [anon_sym_after] = ACTIONS(13),
    [anon_sym_against] = ACTIONS(13),
    [anon_sym_agl] = ACTIONS(13),
    [anon_sym_allocated] = ACTIONS(13),
    [anon_sym_am] = ACTIONS(13),
    [anon_sym_ambient] = ACTIONS(13),
    [anon_sym_amsl] = ACTIONS(13),
    [anon_sym_apart] = ACTIONS(13),
    [anon_sym_at] = ACTIONS(13),
    [anon_sym_averaging] = ACTIONS(13),
    [anon_sym_below] = ACTIONS(13),
    [anon_sym_beyond] = ACTIONS(13),
    [anon_sym_blank] = ACTIONS(13),
    [anon_sym_bow] = ACTIONS(13),
    [anon_sym_bullington] = ACTIONS(13),
    [anon_sym_by] = ACTIONS(13),
    [anon_sym_carrier] = ACTIONS(13),
    [anon_sym_cascade] = ACTIONS(13),
    [anon_sym_city] = ACTIONS(13),
    [anon_sym_clad] = ACTIONS(13),
    [anon_sym_confidence] = ACTIONS(13),
    [anon_sym_corrected] = ACTIONS(13),
    [anon_sym_cw] = ACTIONS(13),
    [anon_sym_dB] = ACTIONS(13),
    [anon_sym_dBW] = ACTIONS(13),
    [anon_sym_dBd] = ACTIONS(13),
    [anon_sym_dBi] = ACTIONS(13),
    [anon_sym_dBm] = ACTIONS(13),
    [anon_sym_data] = ACTIONS(13),
    [anon_sym_date] = ACTIONS(13),
    [anon_sym_datum] = ACTIONS(13),
    [anon_sym_dc_DASHinput] = ACTIONS(13),
    [anon_sym_degrees] = ACTIONS(13),
    [anon_sym_delivered] = ACTIONS(13),
    [anon_sym_desense] = ACTIONS(13),
    [anon_sym_displayed] = ACTIONS(13),
    [anon_sym_dms] = ACTIONS(13),
    [anon_sym_down] = ACTIONS(13),
    [anon_sym_eirp] = ACTIONS(13),
    [anon_sym_elevation] = ACTIONS(13),
    [anon_sym_ends] = ACTIONS(13),
    [anon_sym_erp] = ACTIONS(13),
    [anon_sym_etrs89] = ACTIONS(13),
    [anon_sym_figure] = ACTIONS(13),
    [anon_sym_fm] = ACTIONS(13),
    [anon_sym_for] = ACTIONS(13),
    [anon_sym_forward] = ACTIONS(13),
    [anon_sym_free_DASHspace] = ACTIONS(13),
    [anon_sym_frequency] = ACTIONS(13),
    [anon_sym_ft] = ACTIONS(13),
    [anon_sym_full] = ACTIONS(13),
    [anon_sym_guess] = ACTIONS(13),
    [anon_sym_hata_DASHopen] = ACTIONS(13),
    [anon_sym_hata_DASHsuburban] = ACTIONS(13),
    [anon_sym_hata_DASHurban] = ACTIONS(13),
    [anon_sym_height_DASHamsl] = ACTIONS(13),
    [anon_sym_horizontal] = ACTIONS(13),
    [anon_sym_if] = ACTIONS(13),
    [anon_sym_in] = ACTIONS(13),
    [anon_sym_input] = ACTIONS(13),
    [anon_sym_instead] = ACTIONS(13),
    [anon_sym_k] = ACTIONS(13),
    [anon_sym_kHz] = ACTIONS(13),
    [anon_sym_kW] = ACTIONS(13),
    [anon_sym_km] = ACTIONS(13),
    [anon_sym_latitude] = ACTIONS(13),
    [anon_sym_longitude] = ACTIONS(13),
    [anon_sym_m] = ACTIONS(13),
    [anon_sym_mW] = ACTIONS(13),
    [anon_sym_maximum] = ACTIONS(13),
    [anon_sym_mean] = ACTIONS(13),
    [anon_sym_medium] = ACTIONS(13),
    [anon_sym_nad27] = ACTIONS(13),
    [anon_sym_nad83] = ACTIONS(13),
    [anon_sym_net] = ACTIONS(13),
    [anon_sym_no] = ACTIONS(13),
    [anon_sym_nominal] = ACTIONS(13),
    [anon_sym_occupational] = ACTIONS(13),
    [anon_sym_of] = ACTIONS(13),
    [anon_sym_offset] = ACTIONS(13),
    [anon_sym_on] = ACTIONS(13),
    [anon_sym_one_DASHedge] = ACTIONS(13),
    [anon_sym_out] = ACTIONS(13),
    [anon_sym_output] = ACTIONS(13),
    [anon_sym_over] = ACTIONS(13),
    [anon_sym_pep] = ACTIONS(13),
    [anon_sym_per] = ACTIONS(13),
    [anon_sym_places] = ACTIONS(13),
    [anon_sym_public] = ACTIONS(13),
    [anon_sym_quiet_DASHrural] = ACTIONS(13),
    [anon_sym_quieting] = ACTIONS(13),
    [anon_sym_rated] = ACTIONS(13),
    [anon_sym_reactance] = ACTIONS(13),
    [anon_sym_reading] = ACTIONS(13),
    [anon_sym_realized] = ACTIONS(13),
    [anon_sym_receive_DASHfrequency] = ACTIONS(13),
    [anon_sym_receive_DASHloss] = ACTIONS(13),
    [anon_sym_reference] = ACTIONS(13),
    [anon_sym_reflected] = ACTIONS(13),
    [anon_sym_rejects] = ACTIONS(13),
    [anon_sym_residential] = ACTIONS(13),
    [anon_sym_rural] = ACTIONS(13),
    [anon_sym_series] = ACTIONS(13),
    [anon_sym_shared] = ACTIONS(13),
    [anon_sym_sheet] = ACTIONS(13),
    [anon_sym_shunt] = ACTIONS(13),
    [anon_sym_sinad] = ACTIONS(13),
    [anon_sym_since] = ACTIONS(13),
    [anon_sym_snr] = ACTIONS(13),
    [anon_sym_spread] = ACTIONS(13),
    [anon_sym_ssb] = ACTIONS(13),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(13),
    [anon_sym_then] = ACTIONS(13),
    [anon_sym_title] = ACTIONS(13),
    [anon_sym_to] = ACTIONS(13),
    [anon_sym_total] = ACTIONS(13),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(13),
    [anon_sym_two_DASHray] = ACTIONS(13),
    [anon_sym_typical] = ACTIONS(13),
    [anon_sym_up] = ACTIONS(13),
    [anon_sym_vertical] = ACTIONS(13),
    [anon_sym_way] = ACTIONS(13),
    [anon_sym_wet] = ACTIONS(13),
    [anon_sym_wgs84] = ACTIONS(13),
    [anon_sym_with] = ACTIONS(13),
    [anon_sym_within] = ACTIONS(13),
    [anon_sym_yes] = ACTIONS(13),
    [anon_sym_LPAREN] = ACTIONS(15),
    [anon_sym_DASH] = ACTIONS(17),
    [anon_sym_u2212] = ACTIONS(17),
    [anon_sym_u2013] = ACTIONS(17),
    [sym__glued] = ACTIONS(19),
    [sym_number] = ACTIONS(21),
    [sym_digit_name] = ACTIONS(7),
    [sym_comment] = ACTIONS(3),
  },
  [10] = {
    [sym__line] = STATE(7),
    [sym__end] = STATE(7),
    [sym_statement] = STATE(65),
    [sym_block_statement] = STATE(7),
    [sym__head] = STATE(64),
    [sym_keyword] = STATE(4),
    [sym_only_word] = STATE(4),
    [sym__value] = STATE(4),
    [sym_range] = STATE(4),
    [sym_tolerance] = STATE(4),
    [sym__expression] = STATE(11),
    [sym_parenthesized_expression] = STATE(13),
    [sym_negation] = STATE(13),
    [sym_binary_expression] = STATE(13),
    [sym_quantity] = STATE(13),
    [aux_sym_source_file_repeat1] = STATE(7),
    [sym_name] = ACTIONS(7),
    [aux_sym__end_token1] = ACTIONS(107),
    [anon_sym_SEMI] = ACTIONS(107),
    [anon_sym_RBRACE] = ACTIONS(113),
    [anon_sym_use] = ACTIONS(11),
    [anon_sym_band] = ACTIONS(11),
    [anon_sym_let] = ACTIONS(11),
    [anon_sym_cable] = ACTIONS(11),
    [anon_sym_connector] = ACTIONS(11),
    [anon_sym_device] = ACTIONS(11),
    [anon_sym_instrument] = ACTIONS(11),
    [anon_sym_session] = ACTIONS(11),
    [anon_sym_station] = ACTIONS(11),
    [anon_sym_chain] = ACTIONS(11),
    [anon_sym_licence] = ACTIONS(11),
    [anon_sym_rules] = ACTIONS(11),
    [anon_sym_link] = ACTIONS(11),
    [anon_sym_variant] = ACTIONS(11),
    [anon_sym_accept] = ACTIONS(11),
    [anon_sym_transmit] = ACTIONS(11),
    [anon_sym_receive] = ACTIONS(11),
    [anon_sym_impedance] = ACTIONS(11),
    [anon_sym_velocity] = ACTIONS(11),
    [anon_sym_loss] = ACTIONS(11),
    [anon_sym_construction] = ACTIONS(11),
    [anon_sym_wires] = ACTIONS(11),
    [anon_sym_valid] = ACTIONS(11),
    [anon_sym_accuracy] = ACTIONS(11),
    [anon_sym_rating] = ACTIONS(11),
    [anon_sym_voltage] = ACTIONS(11),
    [anon_sym_size] = ACTIONS(11),
    [anon_sym_conductor] = ACTIONS(11),
    [anon_sym_source] = ACTIONS(11),
    [anon_sym_recalled] = ACTIONS(11),
    [anon_sym_joins] = ACTIONS(11),
    [anon_sym_limit] = ACTIONS(11),
    [anon_sym_family] = ACTIONS(11),
    [anon_sym_bump] = ACTIONS(11),
    [anon_sym_return_DASHloss] = ACTIONS(11),
    [anon_sym_swr] = ACTIONS(11),
    [anon_sym_kind] = ACTIONS(11),
    [anon_sym_high] = ACTIONS(11),
    [anon_sym_low] = ACTIONS(11),
    [anon_sym_port] = ACTIONS(11),
    [anon_sym_from] = ACTIONS(11),
    [anon_sym_isolation] = ACTIONS(11),
    [anon_sym_ratio] = ACTIONS(11),
    [anon_sym_split] = ACTIONS(11),
    [anon_sym_tee] = ACTIONS(11),
    [anon_sym_reversed] = ACTIONS(11),
    [anon_sym_passes] = ACTIONS(11),
    [anon_sym_gain] = ACTIONS(11),
    [anon_sym_noise] = ACTIONS(11),
    [anon_sym_excess] = ACTIONS(11),
    [anon_sym_ways] = ACTIONS(11),
    [anon_sym_coupled] = ACTIONS(11),
    [anon_sym_calibrated] = ACTIONS(11),
    [anon_sym_scale] = ACTIONS(11),
    [anon_sym_resolution] = ACTIONS(11),
    [anon_sym_due] = ACTIONS(11),
    [anon_sym_linearity] = ACTIONS(11),
    [anon_sym_repeatability] = ACTIONS(11),
    [anon_sym_directivity] = ACTIONS(11),
    [anon_sym_certificate] = ACTIONS(11),
    [anon_sym_load] = ACTIONS(11),
    [anon_sym_read] = ACTIONS(11),
    [anon_sym_temperature] = ACTIONS(11),
    [anon_sym_generator] = ACTIONS(11),
    [anon_sym_drift] = ACTIONS(11),
    [anon_sym_piece] = ACTIONS(11),
    [anon_sym_readings] = ACTIONS(11),
    [anon_sym_resonance] = ACTIONS(11),
    [anon_sym_delay] = ACTIONS(11),
    [anon_sym_phase] = ACTIONS(11),
    [anon_sym_adapter] = ACTIONS(11),
    [anon_sym_position] = ACTIONS(11),
    [anon_sym_ground] = ACTIONS(11),
    [anon_sym_place] = ACTIONS(11),
    [anon_sym_under] = ACTIONS(11),
    [anon_sym_beside] = ACTIONS(11),
    [anon_sym_spot] = ACTIONS(11),
    [anon_sym_alone] = ACTIONS(11),
    [anon_sym_site_DASHnoise] = ACTIONS(11),
    [anon_sym_transmitter] = ACTIONS(11),
    [anon_sym_receiver] = ACTIONS(11),
    [anon_sym_transceiver] = ACTIONS(11),
    [anon_sym_run] = ACTIONS(11),
    [anon_sym_jumper] = ACTIONS(11),
    [anon_sym_tail] = ACTIONS(11),
    [anon_sym_pad] = ACTIONS(11),
    [anon_sym_filter] = ACTIONS(11),
    [anon_sym_isolator] = ACTIONS(11),
    [anon_sym_circulator] = ACTIONS(11),
    [anon_sym_protector] = ACTIONS(11),
    [anon_sym_switch] = ACTIONS(11),
    [anon_sym_coupler] = ACTIONS(11),
    [anon_sym_meter] = ACTIONS(11),
    [anon_sym_balun] = ACTIONS(11),
    [anon_sym_tuner] = ACTIONS(11),
    [anon_sym_duplexer] = ACTIONS(11),
    [anon_sym_diplexer] = ACTIONS(11),
    [anon_sym_combiner] = ACTIONS(11),
    [anon_sym_divider] = ACTIONS(11),
    [anon_sym_amplifier] = ACTIONS(11),
    [anon_sym_preamplifier] = ACTIONS(11),
    [anon_sym_antenna] = ACTIONS(11),
    [anon_sym_branches] = ACTIONS(11),
    [anon_sym_expect] = ACTIONS(11),
    [anon_sym_authority] = ACTIONS(11),
    [anon_sym_jurisdiction] = ACTIONS(11),
    [anon_sym_service] = ACTIONS(11),
    [anon_sym_edition] = ACTIONS(11),
    [anon_sym_dated] = ACTIONS(11),
    [anon_sym_until] = ACTIONS(11),
    [anon_sym_holder] = ACTIONS(11),
    [anon_sym_class] = ACTIONS(11),
    [anon_sym_ask] = ACTIONS(11),
    [anon_sym_threshold] = ACTIONS(11),
    [anon_sym_fixed] = ACTIONS(11),
    [anon_sym_condition] = ACTIONS(11),
    [anon_sym_reflection] = ACTIONS(11),
    [anon_sym_field] = ACTIONS(11),
    [anon_sym_hop] = ACTIONS(11),
    [anon_sym_profile] = ACTIONS(11),
    [anon_sym_distance] = ACTIONS(11),
    [anon_sym_k_DASHfactor] = ACTIONS(11),
    [anon_sym_need] = ACTIONS(11),
    [anon_sym_model] = ACTIONS(11),
    [anon_sym_coverage] = ACTIONS(11),
    [anon_sym_take] = ACTIONS(11),
    [anon_sym_put] = ACTIONS(11),
    [anon_sym_branch] = ACTIONS(11),
    [anon_sym_inner] = ACTIONS(11),
    [anon_sym_outer] = ACTIONS(11),
    [anon_sym_permittivity] = ACTIONS(11),
    [anon_sym_loss_DASHtangent] = ACTIONS(11),
    [anon_sym_strand] = ACTIONS(11),
    [anon_sym_strand_DASHdiameter] = ACTIONS(11),
    [anon_sym_braid] = ACTIONS(11),
    [anon_sym_resistivity] = ACTIONS(11),
    [anon_sym_inner_DASHresistivity] = ACTIONS(11),
    [anon_sym_outer_DASHresistivity] = ACTIONS(11),
    [anon_sym_diameter] = ACTIONS(11),
    [anon_sym_spacing] = ACTIONS(11),
    [anon_sym_baseline] = ACTIONS(11),
    [anon_sym_through] = ACTIONS(11),
    [anon_sym_open] = ACTIONS(11),
    [anon_sym_short] = ACTIONS(11),
    [anon_sym_equalise] = ACTIONS(11),
    [anon_sym_power] = ACTIONS(11),
    [anon_sym_mode] = ACTIONS(11),
    [anon_sym_duty] = ACTIONS(11),
    [anon_sym_keyed] = ACTIONS(11),
    [anon_sym_foldback] = ACTIONS(11),
    [anon_sym_bandwidth] = ACTIONS(11),
    [anon_sym_sensitivity] = ACTIONS(11),
    [anon_sym_blocking] = ACTIONS(11),
    [anon_sym_efficiency] = ACTIONS(11),
    [anon_sym_height] = ACTIONS(11),
    [anon_sym_pattern] = ACTIONS(11),
    [anon_sym_haat] = ACTIONS(11),
    [anon_sym_radius] = ACTIONS(11),
    [anon_sym_fails] = ACTIONS(11),
    [anon_sym_GHz] = ACTIONS(13),
    [anon_sym_Hz] = ACTIONS(13),
    [anon_sym_MHz] = ACTIONS(13),
    [anon_sym_above] = ACTIONS(13),
    [anon_sym_added] = ACTIONS(13),
    [anon_sym_after] = ACTIONS(13),
    [anon_sym_against] = ACTIONS(13),
    [anon_sym_agl] = ACTIONS(13),
    [anon_sym_allocated] = ACTIONS(13),
    [anon_sym_am] = ACTIONS(13),
    [anon_sym_ambient] = ACTIONS(13),
    [anon_sym_amsl] = ACTIONS(13),
    [anon_sym_apart] = ACTIONS(13),
    [anon_sym_at] = ACTIONS(13),
    [anon_sym_averaging] = ACTIONS(13),
    [anon_sym_below] = ACTIONS(13),
    [anon_sym_beyond] = ACTIONS(13),
    [anon_sym_blank] = ACTIONS(13),
    [anon_sym_bow] = ACTIONS(13),
    [anon_sym_bullington] = ACTIONS(13),
    [anon_sym_by] = ACTIONS(13),
    [anon_sym_carrier] = ACTIONS(13),
    [anon_sym_cascade] = ACTIONS(13),
    [anon_sym_city] = ACTIONS(13),
    [anon_sym_clad] = ACTIONS(13),
    [anon_sym_confidence] = ACTIONS(13),
    [anon_sym_corrected] = ACTIONS(13),
    [anon_sym_cw] = ACTIONS(13),
    [anon_sym_dB] = ACTIONS(13),
    [anon_sym_dBW] = ACTIONS(13),
    [anon_sym_dBd] = ACTIONS(13),
    [anon_sym_dBi] = ACTIONS(13),
    [anon_sym_dBm] = ACTIONS(13),
    [anon_sym_data] = ACTIONS(13),
    [anon_sym_date] = ACTIONS(13),
    [anon_sym_datum] = ACTIONS(13),
    [anon_sym_dc_DASHinput] = ACTIONS(13),
    [anon_sym_degrees] = ACTIONS(13),
    [anon_sym_delivered] = ACTIONS(13),
    [anon_sym_desense] = ACTIONS(13),
    [anon_sym_displayed] = ACTIONS(13),
    [anon_sym_dms] = ACTIONS(13),
    [anon_sym_down] = ACTIONS(13),
    [anon_sym_eirp] = ACTIONS(13),
    [anon_sym_elevation] = ACTIONS(13),
    [anon_sym_ends] = ACTIONS(13),
    [anon_sym_erp] = ACTIONS(13),
    [anon_sym_etrs89] = ACTIONS(13),
    [anon_sym_figure] = ACTIONS(13),
    [anon_sym_fm] = ACTIONS(13),
    [anon_sym_for] = ACTIONS(13),
    [anon_sym_forward] = ACTIONS(13),
    [anon_sym_free_DASHspace] = ACTIONS(13),
    [anon_sym_frequency] = ACTIONS(13),
    [anon_sym_ft] = ACTIONS(13),
    [anon_sym_full] = ACTIONS(13),
    [anon_sym_guess] = ACTIONS(13),
    [anon_sym_hata_DASHopen] = ACTIONS(13),
    [anon_sym_hata_DASHsuburban] = ACTIONS(13),
    [anon_sym_hata_DASHurban] = ACTIONS(13),
    [anon_sym_height_DASHamsl] = ACTIONS(13),
    [anon_sym_horizontal] = ACTIONS(13),
    [anon_sym_if] = ACTIONS(13),
    [anon_sym_in] = ACTIONS(13),
    [anon_sym_input] = ACTIONS(13),
    [anon_sym_instead] = ACTIONS(13),
    [anon_sym_k] = ACTIONS(13),
    [anon_sym_kHz] = ACTIONS(13),
    [anon_sym_kW] = ACTIONS(13),
    [anon_sym_km] = ACTIONS(13),
    [anon_sym_latitude] = ACTIONS(13),
    [anon_sym_longitude] = ACTIONS(13),
    [anon_sym_m] = ACTIONS(13),
    [anon_sym_mW] = ACTIONS(13),
    [anon_sym_maximum] = ACTIONS(13),
    [anon_sym_mean] = ACTIONS(13),
    [anon_sym_medium] = ACTIONS(13),
    [anon_sym_nad27] = ACTIONS(13),
    [anon_sym_nad83] = ACTIONS(13),
    [anon_sym_net] = ACTIONS(13),
    [anon_sym_no] = ACTIONS(13),
    [anon_sym_nominal] = ACTIONS(13),
    [anon_sym_occupational] = ACTIONS(13),
    [anon_sym_of] = ACTIONS(13),
    [anon_sym_offset] = ACTIONS(13),
    [anon_sym_on] = ACTIONS(13),
    [anon_sym_one_DASHedge] = ACTIONS(13),
    [anon_sym_out] = ACTIONS(13),
    [anon_sym_output] = ACTIONS(13),
    [anon_sym_over] = ACTIONS(13),
    [anon_sym_pep] = ACTIONS(13),
    [anon_sym_per] = ACTIONS(13),
    [anon_sym_places] = ACTIONS(13),
    [anon_sym_public] = ACTIONS(13),
    [anon_sym_quiet_DASHrural] = ACTIONS(13),
    [anon_sym_quieting] = ACTIONS(13),
    [anon_sym_rated] = ACTIONS(13),
    [anon_sym_reactance] = ACTIONS(13),
    [anon_sym_reading] = ACTIONS(13),
    [anon_sym_realized] = ACTIONS(13),
    [anon_sym_receive_DASHfrequency] = ACTIONS(13),
    [anon_sym_receive_DASHloss] = ACTIONS(13),
    [anon_sym_reference] = ACTIONS(13),
    [anon_sym_reflected] = ACTIONS(13),
    [anon_sym_rejects] = ACTIONS(13),
    [anon_sym_residential] = ACTIONS(13),
    [anon_sym_rural] = ACTIONS(13),
    [anon_sym_series] = ACTIONS(13),
    [anon_sym_shared] = ACTIONS(13),
    [anon_sym_sheet] = ACTIONS(13),
    [anon_sym_shunt] = ACTIONS(13),
    [anon_sym_sinad] = ACTIONS(13),
    [anon_sym_since] = ACTIONS(13),
    [anon_sym_snr] = ACTIONS(13),
    [anon_sym_spread] = ACTIONS(13),
    [anon_sym_ssb] = ACTIONS(13),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(13),
    [anon_sym_then] = ACTIONS(13),
    [anon_sym_title] = ACTIONS(13),
    [anon_sym_to] = ACTIONS(13),
    [anon_sym_total] = ACTIONS(13),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(13),
    [anon_sym_two_DASHray] = ACTIONS(13),
    [anon_sym_typical] = ACTIONS(13),
    [anon_sym_up] = ACTIONS(13),
    [anon_sym_vertical] = ACTIONS(13),
    [anon_sym_way] = ACTIONS(13),
    [anon_sym_wet] = ACTIONS(13),
    [anon_sym_wgs84] = ACTIONS(13),
    [anon_sym_with] = ACTIONS(13),
    [anon_sym_within] = ACTIONS(13),
    [anon_sym_yes] = ACTIONS(13),
    [anon_sym_LPAREN] = ACTIONS(15),
    [anon_sym_DASH] = ACTIONS(17),
    [anon_sym_u2212] = ACTIONS(17),
    [anon_sym_u2013] = ACTIONS(17),
    [sym__glued] = ACTIONS(19),
    [sym_number] = ACTIONS(21),
    [sym_digit_name] = ACTIONS(7),
    [sym_comment] = ACTIONS(3),
  },
  [11] = {
    [sym_coverage] = STATE(35),
    [ts_builtin_sym_end] = ACTIONS(115),
    [sym_name] = ACTIONS(117),
    [aux_sym__end_token1] = ACTIONS(115),
    [anon_sym_SEMI] = ACTIONS(115),
    [anon_sym_LBRACE] = ACTIONS(115),
    [anon_sym_RBRACE] = ACTIONS(115),
    [anon_sym_use] = ACTIONS(117),
    [anon_sym_band] = ACTIONS(117),
    [anon_sym_let] = ACTIONS(117),
    [anon_sym_cable] = ACTIONS(117),
    [anon_sym_connector] = ACTIONS(117),
    [anon_sym_device] = ACTIONS(117),
    [anon_sym_instrument] = ACTIONS(117),
    [anon_sym_session] = ACTIONS(117),
    [anon_sym_station] = ACTIONS(117),
    [anon_sym_chain] = ACTIONS(117),
    [anon_sym_licence] = ACTIONS(117),
    [anon_sym_rules] = ACTIONS(117),
    [anon_sym_link] = ACTIONS(117),
    [anon_sym_variant] = ACTIONS(117),
    [anon_sym_accept] = ACTIONS(117),
    [anon_sym_transmit] = ACTIONS(117),
    [anon_sym_receive] = ACTIONS(117),
    [anon_sym_impedance] = ACTIONS(117),
    [anon_sym_velocity] = ACTIONS(117),
    [anon_sym_loss] = ACTIONS(117),
    [anon_sym_construction] = ACTIONS(117),
    [anon_sym_wires] = ACTIONS(117),
    [anon_sym_valid] = ACTIONS(117),
    [anon_sym_accuracy] = ACTIONS(117),
    [anon_sym_rating] = ACTIONS(117),
    [anon_sym_voltage] = ACTIONS(117),
    [anon_sym_size] = ACTIONS(117),
    [anon_sym_conductor] = ACTIONS(117),
    [anon_sym_source] = ACTIONS(117),
    [anon_sym_recalled] = ACTIONS(117),
    [anon_sym_joins] = ACTIONS(117),
    [anon_sym_limit] = ACTIONS(117),
    [anon_sym_family] = ACTIONS(117),
    [anon_sym_bump] = ACTIONS(117),
    [anon_sym_return_DASHloss] = ACTIONS(117),
    [anon_sym_swr] = ACTIONS(117),
    [anon_sym_kind] = ACTIONS(117),
    [anon_sym_high] = ACTIONS(117),
    [anon_sym_low] = ACTIONS(117),
    [anon_sym_port] = ACTIONS(117),
    [anon_sym_from] = ACTIONS(117),
    [anon_sym_isolation] = ACTIONS(117),
    [anon_sym_ratio] = ACTIONS(117),
    [anon_sym_split] = ACTIONS(117),
    [anon_sym_tee] = ACTIONS(117),
    [anon_sym_reversed] = ACTIONS(117),
    [anon_sym_passes] = ACTIONS(117),
    [anon_sym_gain] = ACTIONS(117),
    [anon_sym_noise] = ACTIONS(117),
    [anon_sym_excess] = ACTIONS(117),
    [anon_sym_ways] = ACTIONS(117),
    [anon_sym_coupled] = ACTIONS(117),
    [anon_sym_calibrated] = ACTIONS(117),
    [anon_sym_scale] = ACTIONS(117),
    [anon_sym_resolution] = ACTIONS(117),
    [anon_sym_due] = ACTIONS(117),
    [anon_sym_linearity] = ACTIONS(117),
    [anon_sym_repeatability] = ACTIONS(117),
    [anon_sym_directivity] = ACTIONS(117),
    [anon_sym_certificate] = ACTIONS(117),
    [anon_sym_load] = ACTIONS(117),
    [anon_sym_read] = ACTIONS(117),
    [anon_sym_temperature] = ACTIONS(117),
    [anon_sym_generator] = ACTIONS(117),
    [anon_sym_drift] = ACTIONS(117),
    [anon_sym_piece] = ACTIONS(117),
    [anon_sym_readings] = ACTIONS(117),
    [anon_sym_resonance] = ACTIONS(117),
    [anon_sym_delay] = ACTIONS(117),
    [anon_sym_phase] = ACTIONS(117),
    [anon_sym_adapter] = ACTIONS(117),
    [anon_sym_position] = ACTIONS(117),
    [anon_sym_ground] = ACTIONS(117),
    [anon_sym_place] = ACTIONS(117),
    [anon_sym_under] = ACTIONS(117),
    [anon_sym_beside] = ACTIONS(117),
    [anon_sym_spot] = ACTIONS(117),
    [anon_sym_alone] = ACTIONS(117),
    [anon_sym_site_DASHnoise] = ACTIONS(117),
    [anon_sym_transmitter] = ACTIONS(117),
    [anon_sym_receiver] = ACTIONS(117),
    [anon_sym_transceiver] = ACTIONS(117),
    [anon_sym_run] = ACTIONS(117),
    [anon_sym_jumper] = ACTIONS(117),
    [anon_sym_tail] = ACTIONS(117),
    [anon_sym_pad] = ACTIONS(117),
    [anon_sym_filter] = ACTIONS(117),
    [anon_sym_isolator] = ACTIONS(117),
    [anon_sym_circulator] = ACTIONS(117),
    [anon_sym_protector] = ACTIONS(117),
    [anon_sym_switch] = ACTIONS(117),
    [anon_sym_coupler] = ACTIONS(117),
    [anon_sym_meter] = ACTIONS(117),
    [anon_sym_balun] = ACTIONS(117),
    [anon_sym_tuner] = ACTIONS(117),
    [anon_sym_duplexer] = ACTIONS(117),
    [anon_sym_diplexer] = ACTIONS(117),
    [anon_sym_combiner] = ACTIONS(117),
    [anon_sym_divider] = ACTIONS(117),
    [anon_sym_amplifier] = ACTIONS(117),
    [anon_sym_preamplifier] = ACTIONS(117),
    [anon_sym_antenna] = ACTIONS(117),
    [anon_sym_branches] = ACTIONS(117),
    [anon_sym_expect] = ACTIONS(117),
    [anon_sym_authority] = ACTIONS(117),
    [anon_sym_jurisdiction] = ACTIONS(117),
    [anon_sym_service] = ACTIONS(117),
    [anon_sym_edition] = ACTIONS(117),
    [anon_sym_dated] = ACTIONS(117),
    [anon_sym_until] = ACTIONS(117),
    [anon_sym_holder] = ACTIONS(117),
    [anon_sym_class] = ACTIONS(117),
    [anon_sym_ask] = ACTIONS(117),
    [anon_sym_threshold] = ACTIONS(117),
    [anon_sym_fixed] = ACTIONS(117),
    [anon_sym_condition] = ACTIONS(117),
    [anon_sym_reflection] = ACTIONS(117),
    [anon_sym_field] = ACTIONS(117),
    [anon_sym_hop] = ACTIONS(117),
    [anon_sym_profile] = ACTIONS(117),
    [anon_sym_distance] = ACTIONS(117),
    [anon_sym_k_DASHfactor] = ACTIONS(117),
    [anon_sym_need] = ACTIONS(117),
    [anon_sym_model] = ACTIONS(117),
    [anon_sym_coverage] = ACTIONS(117),
    [anon_sym_take] = ACTIONS(117),
    [anon_sym_put] = ACTIONS(117),
    [anon_sym_branch] = ACTIONS(117),
    [anon_sym_inner] = ACTIONS(117),
    [anon_sym_outer] = ACTIONS(117),
    [anon_sym_permittivity] = ACTIONS(117),
    [anon_sym_loss_DASHtangent] = ACTIONS(117),
    [anon_sym_strand] = ACTIONS(117),
    [anon_sym_strand_DASHdiameter] = ACTIONS(117),
    [anon_sym_braid] = ACTIONS(117),
    [anon_sym_resistivity] = ACTIONS(117),
    [anon_sym_inner_DASHresistivity] = ACTIONS(117),
    [anon_sym_outer_DASHresistivity] = ACTIONS(117),
    [anon_sym_diameter] = ACTIONS(117),
    [anon_sym_spacing] = ACTIONS(117),
    [anon_sym_baseline] = ACTIONS(117),
    [anon_sym_through] = ACTIONS(117),
    [anon_sym_open] = ACTIONS(117),
    [anon_sym_short] = ACTIONS(117),
    [anon_sym_equalise] = ACTIONS(117),
    [anon_sym_power] = ACTIONS(117),
    [anon_sym_mode] = ACTIONS(117),
    [anon_sym_duty] = ACTIONS(117),
    [anon_sym_keyed] = ACTIONS(117),
    [anon_sym_foldback] = ACTIONS(117),
    [anon_sym_bandwidth] = ACTIONS(117),
    [anon_sym_sensitivity] = ACTIONS(117),
    [anon_sym_blocking] = ACTIONS(117),
    [anon_sym_efficiency] = ACTIONS(117),
    [anon_sym_height] = ACTIONS(117),
    [anon_sym_pattern] = ACTIONS(117),
    [anon_sym_haat] = ACTIONS(117),
    [anon_sym_radius] = ACTIONS(117),
    [anon_sym_fails] = ACTIONS(117),
    [anon_sym_GHz] = ACTIONS(117),
    [anon_sym_Hz] = ACTIONS(117),
    [anon_sym_MHz] = ACTIONS(117),
    [anon_sym_above] = ACTIONS(117),
    [anon_sym_added] = ACTIONS(117),
    [anon_sym_after] = ACTIONS(117),
    [anon_sym_against] = ACTIONS(117),
    [anon_sym_agl] = ACTIONS(117),
    [anon_sym_allocated] = ACTIONS(117),
    [anon_sym_am] = ACTIONS(117),
    [anon_sym_ambient] = ACTIONS(117),
    [anon_sym_amsl] = ACTIONS(117),
    [anon_sym_apart] = ACTIONS(117),
    [anon_sym_at] = ACTIONS(117),
    [anon_sym_averaging] = ACTIONS(117),
    [anon_sym_below] = ACTIONS(117),
    [anon_sym_beyond] = ACTIONS(117),
    [anon_sym_blank] = ACTIONS(117),
    [anon_sym_bow] = ACTIONS(117),
    [anon_sym_bullington] = ACTIONS(117),
    [anon_sym_by] = ACTIONS(117),
    [anon_sym_carrier] = ACTIONS(117),
    [anon_sym_cascade] = ACTIONS(117),
    [anon_sym_city] = ACTIONS(117),
    [anon_sym_clad] = ACTIONS(117),
    [anon_sym_confidence] = ACTIONS(117),
    [anon_sym_corrected] = ACTIONS(117),
    [anon_sym_cw] = ACTIONS(117),
    [anon_sym_dB] = ACTIONS(117),
    [anon_sym_dBW] = ACTIONS(117),
    [anon_sym_dBd] = ACTIONS(117),
    [anon_sym_dBi] = ACTIONS(117),
    [anon_sym_dBm] = ACTIONS(117),
    [anon_sym_data] = ACTIONS(117),
    [anon_sym_date] = ACTIONS(117),
    [anon_sym_datum] = ACTIONS(117),
    [anon_sym_dc_DASHinput] = ACTIONS(117),
    [anon_sym_degrees] = ACTIONS(117),
    [anon_sym_delivered] = ACTIONS(117),
    [anon_sym_desense] = ACTIONS(117),
    [anon_sym_displayed] = ACTIONS(117),
    [anon_sym_dms] = ACTIONS(117),
    [anon_sym_down] = ACTIONS(117),
    [anon_sym_eirp] = ACTIONS(117),
    [anon_sym_elevation] = ACTIONS(117),
    [anon_sym_ends] = ACTIONS(117),
    [anon_sym_erp] = ACTIONS(117),
    [anon_sym_etrs89] = ACTIONS(117),
    [anon_sym_figure] = ACTIONS(117),
    [anon_sym_fm] = ACTIONS(117),
    [anon_sym_for] = ACTIONS(117),
    [anon_sym_forward] = ACTIONS(117),
    [anon_sym_free_DASHspace] = ACTIONS(117),
    [anon_sym_frequency] = ACTIONS(117),
    [anon_sym_ft] = ACTIONS(117),
    [anon_sym_full] = ACTIONS(117),
    [anon_sym_guess] = ACTIONS(117),
    [anon_sym_hata_DASHopen] = ACTIONS(117),
    [anon_sym_hata_DASHsuburban] = ACTIONS(117),
    [anon_sym_hata_DASHurban] = ACTIONS(117),
    [anon_sym_height_DASHamsl] = ACTIONS(117),
    [anon_sym_horizontal] = ACTIONS(117),
    [anon_sym_if] = ACTIONS(117),
    [anon_sym_in] = ACTIONS(117),
    [anon_sym_input] = ACTIONS(117),
    [anon_sym_instead] = ACTIONS(117),
    [anon_sym_k] = ACTIONS(119),
    [anon_sym_kHz] = ACTIONS(117),
    [anon_sym_kW] = ACTIONS(117),
    [anon_sym_km] = ACTIONS(117),
    [anon_sym_latitude] = ACTIONS(117),
    [anon_sym_longitude] = ACTIONS(117),
    [anon_sym_m] = ACTIONS(117),
    [anon_sym_mW] = ACTIONS(117),
    [anon_sym_maximum] = ACTIONS(117),
    [anon_sym_mean] = ACTIONS(117),
    [anon_sym_medium] = ACTIONS(117),
    [anon_sym_nad27] = ACTIONS(117),
    [anon_sym_nad83] = ACTIONS(117),
    [anon_sym_net] = ACTIONS(117),
    [anon_sym_no] = ACTIONS(117),
    [anon_sym_nominal] = ACTIONS(117),
    [anon_sym_occupational] = ACTIONS(117),
    [anon_sym_of] = ACTIONS(117),
    [anon_sym_offset] = ACTIONS(117),
    [anon_sym_on] = ACTIONS(117),
    [anon_sym_one_DASHedge] = ACTIONS(117),
    [anon_sym_out] = ACTIONS(117),
    [anon_sym_output] = ACTIONS(117),
    [anon_sym_over] = ACTIONS(117),
    [anon_sym_pep] = ACTIONS(117),
    [anon_sym_per] = ACTIONS(117),
    [anon_sym_places] = ACTIONS(117),
    [anon_sym_public] = ACTIONS(117),
    [anon_sym_quiet_DASHrural] = ACTIONS(117),
    [anon_sym_quieting] = ACTIONS(117),
    [anon_sym_rated] = ACTIONS(117),
    [anon_sym_reactance] = ACTIONS(117),
    [anon_sym_reading] = ACTIONS(117),
    [anon_sym_realized] = ACTIONS(117),
    [anon_sym_receive_DASHfrequency] = ACTIONS(117),
    [anon_sym_receive_DASHloss] = ACTIONS(117),
    [anon_sym_reference] = ACTIONS(117),
    [anon_sym_reflected] = ACTIONS(117),
    [anon_sym_rejects] = ACTIONS(117),
    [anon_sym_residential] = ACTIONS(117),
    [anon_sym_rural] = ACTIONS(117),
    [anon_sym_series] = ACTIONS(117),
    [anon_sym_shared] = ACTIONS(117),
    [anon_sym_sheet] = ACTIONS(117),
    [anon_sym_shunt] = ACTIONS(117),
    [anon_sym_sinad] = ACTIONS(117),
    [anon_sym_since] = ACTIONS(117),
    [anon_sym_snr] = ACTIONS(117),
    [anon_sym_spread] = ACTIONS(117),
    [anon_sym_ssb] = ACTIONS(117),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(117),
    [anon_sym_then] = ACTIONS(117),
    [anon_sym_title] = ACTIONS(117),
    [anon_sym_to] = ACTIONS(121),
    [anon_sym_total] = ACTIONS(117),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(117),
    [anon_sym_two_DASHray] = ACTIONS(117),
    [anon_sym_typical] = ACTIONS(117),
    [anon_sym_up] = ACTIONS(117),
    [anon_sym_vertical] = ACTIONS(117),
    [anon_sym_way] = ACTIONS(117),
    [anon_sym_wet] = ACTIONS(117),
    [anon_sym_wgs84] = ACTIONS(117),
    [anon_sym_with] = ACTIONS(117),
    [anon_sym_within] = ACTIONS(117),
    [anon_sym_yes] = ACTIONS(117),
    [anon_sym_COMMA] = ACTIONS(115),
    [anon_sym_EQ] = ACTIONS(115),
    [anon_sym_u00b1] = ACTIONS(123),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(123),
    [anon_sym_LPAREN] = ACTIONS(115),
    [anon_sym_DASH] = ACTIONS(125),
    [anon_sym_u2212] = ACTIONS(125),
    [anon_sym_u2013] = ACTIONS(125),
    [anon_sym_PLUS] = ACTIONS(125),
    [anon_sym_STAR] = ACTIONS(127),
    [anon_sym_SLASH] = ACTIONS(125),
    [anon_sym_CARET] = ACTIONS(127),
    [sym__glued] = ACTIONS(117),
    [sym_date] = ACTIONS(117),
    [sym_dms] = ACTIONS(115),
    [sym_number] = ACTIONS(117),
    [sym_digit_name] = ACTIONS(117),
    [sym_string] = ACTIONS(115),
    [sym_comment] = ACTIONS(3),
  },
  [12] = {
    [ts_builtin_sym_end] = ACTIONS(129),
    [sym_name] = ACTIONS(131),
    [aux_sym__end_token1] = ACTIONS(129),
    [anon_sym_SEMI] = ACTIONS(129),
    [anon_sym_LBRACE] = ACTIONS(129),
    [anon_sym_RBRACE] = ACTIONS(129),
    [anon_sym_use] = ACTIONS(131),
    [anon_sym_band] = ACTIONS(131),
    [anon_sym_let] = ACTIONS(131),
    [anon_sym_cable] = ACTIONS(131),
    [anon_sym_connector] = ACTIONS(131),
    [anon_sym_device] = ACTIONS(131),
    [anon_sym_instrument] = ACTIONS(131),
    [anon_sym_session] = ACTIONS(131),
    [anon_sym_station] = ACTIONS(131),
    [anon_sym_chain] = ACTIONS(131),
    [anon_sym_licence] = ACTIONS(131),
    [anon_sym_rules] = ACTIONS(131),
    [anon_sym_link] = ACTIONS(131),
    [anon_sym_variant] = ACTIONS(131),
    [anon_sym_accept] = ACTIONS(131),
    [anon_sym_transmit] = ACTIONS(131),
    [anon_sym_receive] = ACTIONS(131),
    [anon_sym_impedance] = ACTIONS(131),
    [anon_sym_velocity] = ACTIONS(131),
    [anon_sym_loss] = ACTIONS(131),
    [anon_sym_construction] = ACTIONS(131),
    [anon_sym_wires] = ACTIONS(131),
    [anon_sym_valid] = ACTIONS(131),
    [anon_sym_accuracy] = ACTIONS(131),
    [anon_sym_rating] = ACTIONS(131),
    [anon_sym_voltage] = ACTIONS(131),
    [anon_sym_size] = ACTIONS(131),
    [anon_sym_conductor] = ACTIONS(131),
    [anon_sym_source] = ACTIONS(131),
    [anon_sym_recalled] = ACTIONS(131),
    [anon_sym_joins] = ACTIONS(131),
    [anon_sym_limit] = ACTIONS(131),
    [anon_sym_family] = ACTIONS(131),
    [anon_sym_bump] = ACTIONS(131),
    [anon_sym_return_DASHloss] = ACTIONS(131),
    [anon_sym_swr] = ACTIONS(131),
    [anon_sym_kind] = ACTIONS(131),
    [anon_sym_high] = ACTIONS(131),
    [anon_sym_low] = ACTIONS(131),
    [anon_sym_port] = ACTIONS(131),
    [anon_sym_from] = ACTIONS(131),
    [anon_sym_isolation] = ACTIONS(131),
    [anon_sym_ratio] = ACTIONS(131),
    [anon_sym_split] = ACTIONS(131),
    [anon_sym_tee] = ACTIONS(131),
    [anon_sym_reversed] = ACTIONS(131),
    [anon_sym_passes] = ACTIONS(131),
    [anon_sym_gain] = ACTIONS(131),
    [anon_sym_noise] = ACTIONS(131),
    [anon_sym_excess] = ACTIONS(131),
    [anon_sym_ways] = ACTIONS(131),
    [anon_sym_coupled] = ACTIONS(131),
    [anon_sym_calibrated] = ACTIONS(131),
    [anon_sym_scale] = ACTIONS(131),
    [anon_sym_resolution] = ACTIONS(131),
    [anon_sym_due] = ACTIONS(131),
    [anon_sym_linearity] = ACTIONS(131),
    [anon_sym_repeatability] = ACTIONS(131),
    [anon_sym_directivity] = ACTIONS(131),
    [anon_sym_certificate] = ACTIONS(131),
    [anon_sym_load] = ACTIONS(131),
    [anon_sym_read] = ACTIONS(131),
    [anon_sym_temperature] = ACTIONS(131),
    [anon_sym_generator] = ACTIONS(131),
    [anon_sym_drift] = ACTIONS(131),
    [anon_sym_piece] = ACTIONS(131),
    [anon_sym_readings] = ACTIONS(131),
    [anon_sym_resonance] = ACTIONS(131),
    [anon_sym_delay] = ACTIONS(131),
    [anon_sym_phase] = ACTIONS(131),
    [anon_sym_adapter] = ACTIONS(131),
    [anon_sym_position] = ACTIONS(131),
    [anon_sym_ground] = ACTIONS(131),
    [anon_sym_place] = ACTIONS(131),
    [anon_sym_under] = ACTIONS(131),
    [anon_sym_beside] = ACTIONS(131),
    [anon_sym_spot] = ACTIONS(131),
    [anon_sym_alone] = ACTIONS(131),
    [anon_sym_site_DASHnoise] = ACTIONS(131),
    [anon_sym_transmitter] = ACTIONS(131),
    [anon_sym_receiver] = ACTIONS(131),
    [anon_sym_transceiver] = ACTIONS(131),
    [anon_sym_run] = ACTIONS(131),
    [anon_sym_jumper] = ACTIONS(131),
    [anon_sym_tail] = ACTIONS(131),
    [anon_sym_pad] = ACTIONS(131),
    [anon_sym_filter] = ACTIONS(131),
    [anon_sym_isolator] = ACTIONS(131),
    [anon_sym_circulator] = ACTIONS(131),
    [anon_sym_protector] = ACTIONS(131),
    [anon_sym_switch] = ACTIONS(131),
    [anon_sym_coupler] = ACTIONS(131),
    [anon_sym_meter] = ACTIONS(131),
    [anon_sym_balun] = ACTIONS(131),
    [anon_sym_tuner] = ACTIONS(131),
    [anon_sym_duplexer] = ACTIONS(131),
    [anon_sym_diplexer] = ACTIONS(131),
    [anon_sym_combiner] = ACTIONS(131),
    [anon_sym_divider] = ACTIONS(131),
    [anon_sym_amplifier] = ACTIONS(131),
    [anon_sym_preamplifier] = ACTIONS(131),
    [anon_sym_antenna] = ACTIONS(131),
    [anon_sym_branches] = ACTIONS(131),
    [anon_sym_expect] = ACTIONS(131),
    [anon_sym_authority] = ACTIONS(131),
    [anon_sym_jurisdiction] = ACTIONS(131),
    [anon_sym_service] = ACTIONS(131),
    [anon_sym_edition] = ACTIONS(131),
    [anon_sym_dated] = ACTIONS(131),
    [anon_sym_until] = ACTIONS(131),
    [anon_sym_holder] = ACTIONS(131),
    [anon_sym_class] = ACTIONS(131),
    [anon_sym_ask] = ACTIONS(131),
    [anon_sym_threshold] = ACTIONS(131),
    [anon_sym_fixed] = ACTIONS(131),
    [anon_sym_condition] = ACTIONS(131),
    [anon_sym_reflection] = ACTIONS(131),
    [anon_sym_field] = ACTIONS(131),
    [anon_sym_hop] = ACTIONS(131),
    [anon_sym_profile] = ACTIONS(131),
    [anon_sym_distance] = ACTIONS(131),
    [anon_sym_k_DASHfactor] = ACTIONS(131),
    [anon_sym_need] = ACTIONS(131),
    [anon_sym_model] = ACTIONS(131),
    [anon_sym_coverage] = ACTIONS(131),
    [anon_sym_take] = ACTIONS(131),
    [anon_sym_put] = ACTIONS(131),
    [anon_sym_branch] = ACTIONS(131),
    [anon_sym_inner] = ACTIONS(131),
    [anon_sym_outer] = ACTIONS(131),
    [anon_sym_permittivity] = ACTIONS(131),
    [anon_sym_loss_DASHtangent] = ACTIONS(131),
    [anon_sym_strand] = ACTIONS(131),
    [anon_sym_strand_DASHdiameter] = ACTIONS(131),
    [anon_sym_braid] = ACTIONS(131),
    [anon_sym_resistivity] = ACTIONS(131),
    [anon_sym_inner_DASHresistivity] = ACTIONS(131),
    [anon_sym_outer_DASHresistivity] = ACTIONS(131),
    [anon_sym_diameter] = ACTIONS(131),
    [anon_sym_spacing] = ACTIONS(131),
    [anon_sym_baseline] = ACTIONS(131),
    [anon_sym_through] = ACTIONS(131),
    [anon_sym_open] = ACTIONS(131),
    [anon_sym_short] = ACTIONS(131),
    [anon_sym_equalise] = ACTIONS(131),
    [anon_sym_power] = ACTIONS(131),
    [anon_sym_mode] = ACTIONS(131),
    [anon_sym_duty] = ACTIONS(131),
    [anon_sym_keyed] = ACTIONS(131),
    [anon_sym_foldback] = ACTIONS(131),
    [anon_sym_bandwidth] = ACTIONS(131),
    [anon_sym_sensitivity] = ACTIONS(131),
    [anon_sym_blocking] = ACTIONS(131),
    [anon_sym_efficiency] = ACTIONS(131),
    [anon_sym_height] = ACTIONS(131),
    [anon_sym_pattern] = ACTIONS(131),
    [anon_sym_haat] = ACTIONS(131),
    [anon_sym_radius] = ACTIONS(131),
    [anon_sym_fails] = ACTIONS(131),
    [anon_sym_GHz] = ACTIONS(131),
    [anon_sym_Hz] = ACTIONS(131),
    [anon_sym_MHz] = ACTIONS(131),
    [anon_sym_above] = ACTIONS(131),
    [anon_sym_added] = ACTIONS(131),
    [anon_sym_after] = ACTIONS(131),
    [anon_sym_against] = ACTIONS(131),
    [anon_sym_agl] = ACTIONS(131),
    [anon_sym_allocated] = ACTIONS(131),
    [anon_sym_am] = ACTIONS(131),
    [anon_sym_ambient] = ACTIONS(131),
    [anon_sym_amsl] = ACTIONS(131),
    [anon_sym_apart] = ACTIONS(131),
    [anon_sym_at] = ACTIONS(131),
    [anon_sym_averaging] = ACTIONS(131),
    [anon_sym_below] = ACTIONS(131),
    [anon_sym_beyond] = ACTIONS(131),
    [anon_sym_blank] = ACTIONS(131),
    [anon_sym_bow] = ACTIONS(131),
    [anon_sym_bullington] = ACTIONS(131),
    [anon_sym_by] = ACTIONS(131),
    [anon_sym_carrier] = ACTIONS(131),
    [anon_sym_cascade] = ACTIONS(131),
    [anon_sym_city] = ACTIONS(131),
    [anon_sym_clad] = ACTIONS(131),
    [anon_sym_confidence] = ACTIONS(131),
    [anon_sym_corrected] = ACTIONS(131),
    [anon_sym_cw] = ACTIONS(131),
    [anon_sym_dB] = ACTIONS(131),
    [anon_sym_dBW] = ACTIONS(131),
    [anon_sym_dBd] = ACTIONS(131),
    [anon_sym_dBi] = ACTIONS(131),
    [anon_sym_dBm] = ACTIONS(131),
    [anon_sym_data] = ACTIONS(131),
    [anon_sym_date] = ACTIONS(131),
    [anon_sym_datum] = ACTIONS(131),
    [anon_sym_dc_DASHinput] = ACTIONS(131),
    [anon_sym_degrees] = ACTIONS(131),
    [anon_sym_delivered] = ACTIONS(131),
    [anon_sym_desense] = ACTIONS(131),
    [anon_sym_displayed] = ACTIONS(131),
    [anon_sym_dms] = ACTIONS(131),
    [anon_sym_down] = ACTIONS(131),
    [anon_sym_eirp] = ACTIONS(131),
    [anon_sym_elevation] = ACTIONS(131),
    [anon_sym_ends] = ACTIONS(131),
    [anon_sym_erp] = ACTIONS(131),
    [anon_sym_etrs89] = ACTIONS(131),
    [anon_sym_figure] = ACTIONS(131),
    [anon_sym_fm] = ACTIONS(131),
    [anon_sym_for] = ACTIONS(131),
    [anon_sym_forward] = ACTIONS(131),
    [anon_sym_free_DASHspace] = ACTIONS(131),
    [anon_sym_frequency] = ACTIONS(131),
    [anon_sym_ft] = ACTIONS(131),
    [anon_sym_full] = ACTIONS(131),
    [anon_sym_guess] = ACTIONS(131),
    [anon_sym_hata_DASHopen] = ACTIONS(131),
    [anon_sym_hata_DASHsuburban] = ACTIONS(131),
    [anon_sym_hata_DASHurban] = ACTIONS(131),
    [anon_sym_height_DASHamsl] = ACTIONS(131),
    [anon_sym_horizontal] = ACTIONS(131),
    [anon_sym_if] = ACTIONS(131),
    [anon_sym_in] = ACTIONS(131),
    [anon_sym_input] = ACTIONS(131),
    [anon_sym_instead] = ACTIONS(131),
    [anon_sym_k] = ACTIONS(131),
    [anon_sym_kHz] = ACTIONS(131),
    [anon_sym_kW] = ACTIONS(131),
    [anon_sym_km] = ACTIONS(131),
    [anon_sym_latitude] = ACTIONS(131),
    [anon_sym_longitude] = ACTIONS(131),
    [anon_sym_m] = ACTIONS(131),
    [anon_sym_mW] = ACTIONS(131),
    [anon_sym_maximum] = ACTIONS(131),
    [anon_sym_mean] = ACTIONS(131),
    [anon_sym_medium] = ACTIONS(131),
    [anon_sym_nad27] = ACTIONS(131),
    [anon_sym_nad83] = ACTIONS(131),
    [anon_sym_net] = ACTIONS(131),
    [anon_sym_no] = ACTIONS(131),
    [anon_sym_nominal] = ACTIONS(131),
    [anon_sym_occupational] = ACTIONS(131),
    [anon_sym_of] = ACTIONS(131),
    [anon_sym_offset] = ACTIONS(131),
    [anon_sym_on] = ACTIONS(131),
    [anon_sym_one_DASHedge] = ACTIONS(131),
    [anon_sym_out] = ACTIONS(131),
    [anon_sym_output] = ACTIONS(131),
    [anon_sym_over] = ACTIONS(131),
    [anon_sym_pep] = ACTIONS(131),
    [anon_sym_per] = ACTIONS(131),
    [anon_sym_places] = ACTIONS(131),
    [anon_sym_public] = ACTIONS(131),
    [anon_sym_quiet_DASHrural] = ACTIONS(131),
    [anon_sym_quieting] = ACTIONS(131),
    [anon_sym_rated] = ACTIONS(131),
    [anon_sym_reactance] = ACTIONS(131),
    [anon_sym_reading] = ACTIONS(131),
    [anon_sym_realized] = ACTIONS(131),
    [anon_sym_receive_DASHfrequency] = ACTIONS(131),
    [anon_sym_receive_DASHloss] = ACTIONS(131),
    [anon_sym_reference] = ACTIONS(131),
    [anon_sym_reflected] = ACTIONS(131),
    [anon_sym_rejects] = ACTIONS(131),
    [anon_sym_residential] = ACTIONS(131),
    [anon_sym_rural] = ACTIONS(131),
    [anon_sym_series] = ACTIONS(131),
    [anon_sym_shared] = ACTIONS(131),
    [anon_sym_sheet] = ACTIONS(131),
    [anon_sym_shunt] = ACTIONS(131),
    [anon_sym_sinad] = ACTIONS(131),
    [anon_sym_since] = ACTIONS(131),
    [anon_sym_snr] = ACTIONS(131),
    [anon_sym_spread] = ACTIONS(131),
    [anon_sym_ssb] = ACTIONS(131),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(131),
    [anon_sym_then] = ACTIONS(131),
    [anon_sym_title] = ACTIONS(131),
    [anon_sym_to] = ACTIONS(131),
    [anon_sym_total] = ACTIONS(131),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(131),
    [anon_sym_two_DASHray] = ACTIONS(131),
    [anon_sym_typical] = ACTIONS(131),
    [anon_sym_up] = ACTIONS(131),
    [anon_sym_vertical] = ACTIONS(131),
    [anon_sym_way] = ACTIONS(131),
    [anon_sym_wet] = ACTIONS(131),
    [anon_sym_wgs84] = ACTIONS(131),
    [anon_sym_with] = ACTIONS(131),
    [anon_sym_within] = ACTIONS(131),
    [anon_sym_yes] = ACTIONS(131),
    [anon_sym_COMMA] = ACTIONS(129),
    [anon_sym_EQ] = ACTIONS(129),
    [anon_sym_u00b1] = ACTIONS(129),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(129),
    [anon_sym_LPAREN] = ACTIONS(129),
    [anon_sym_DASH] = ACTIONS(131),
    [anon_sym_u2212] = ACTIONS(131),
    [anon_sym_u2013] = ACTIONS(131),
    [anon_sym_PLUS] = ACTIONS(131),
    [anon_sym_STAR] = ACTIONS(129),
    [anon_sym_SLASH] = ACTIONS(131),
    [anon_sym_CARET] = ACTIONS(129),
    [sym__glued] = ACTIONS(131),
    [sym_date] = ACTIONS(131),
    [sym_dms] = ACTIONS(129),
    [sym_number] = ACTIONS(131),
    [sym_digit_name] = ACTIONS(131),
    [sym_string] = ACTIONS(129),
    [sym_comment] = ACTIONS(3),
  },
  [13] = {
    [ts_builtin_sym_end] = ACTIONS(23),
    [sym_name] = ACTIONS(25),
    [aux_sym__end_token1] = ACTIONS(23),
    [anon_sym_SEMI] = ACTIONS(23),
    [anon_sym_LBRACE] = ACTIONS(23),
    [anon_sym_RBRACE] = ACTIONS(23),
    [anon_sym_use] = ACTIONS(25),
    [anon_sym_band] = ACTIONS(25),
    [anon_sym_let] = ACTIONS(25),
    [anon_sym_cable] = ACTIONS(25),
    [anon_sym_connector] = ACTIONS(25),
    [anon_sym_device] = ACTIONS(25),
    [anon_sym_instrument] = ACTIONS(25),
    [anon_sym_session] = ACTIONS(25),
    [anon_sym_station] = ACTIONS(25),
    [anon_sym_chain] = ACTIONS(25),
    [anon_sym_licence] = ACTIONS(25),
    [anon_sym_rules] = ACTIONS(25),
    [anon_sym_link] = ACTIONS(25),
    [anon_sym_variant] = ACTIONS(25),
    [anon_sym_accept] = ACTIONS(25),
    [anon_sym_transmit] = ACTIONS(25),
    [anon_sym_receive] = ACTIONS(25),
    [anon_sym_impedance] = ACTIONS(25),
    [anon_sym_velocity] = ACTIONS(25),
    [anon_sym_loss] = ACTIONS(25),
    [anon_sym_construction] = ACTIONS(25),
    [anon_sym_wires] = ACTIONS(25),
    [anon_sym_valid] = ACTIONS(25),
    [anon_sym_accuracy] = ACTIONS(25),
    [anon_sym_rating] = ACTIONS(25),
    [anon_sym_voltage] = ACTIONS(25),
    [anon_sym_size] = ACTIONS(25),
    [anon_sym_conductor] = ACTIONS(25),
    [anon_sym_source] = ACTIONS(25),
    [anon_sym_recalled] = ACTIONS(25),
    [anon_sym_joins] = ACTIONS(25),
    [anon_sym_limit] = ACTIONS(25),
    [anon_sym_family] = ACTIONS(25),
    [anon_sym_bump] = ACTIONS(25),
    [anon_sym_return_DASHloss] = ACTIONS(25),
    [anon_sym_swr] = ACTIONS(25),
    [anon_sym_kind] = ACTIONS(25),
    [anon_sym_high] = ACTIONS(25),
    [anon_sym_low] = ACTIONS(25),
    [anon_sym_port] = ACTIONS(25),
    [anon_sym_from] = ACTIONS(25),
    [anon_sym_isolation] = ACTIONS(25),
    [anon_sym_ratio] = ACTIONS(25),
    [anon_sym_split] = ACTIONS(25),
    [anon_sym_tee] = ACTIONS(25),
    [anon_sym_reversed] = ACTIONS(25),
    [anon_sym_passes] = ACTIONS(25),
    [anon_sym_gain] = ACTIONS(25),
    [anon_sym_noise] = ACTIONS(25),
    [anon_sym_excess] = ACTIONS(25),
    [anon_sym_ways] = ACTIONS(25),
    [anon_sym_coupled] = ACTIONS(25),
    [anon_sym_calibrated] = ACTIONS(25),
    [anon_sym_scale] = ACTIONS(25),
    [anon_sym_resolution] = ACTIONS(25),
    [anon_sym_due] = ACTIONS(25),
    [anon_sym_linearity] = ACTIONS(25),
    [anon_sym_repeatability] = ACTIONS(25),
    [anon_sym_directivity] = ACTIONS(25),
    [anon_sym_certificate] = ACTIONS(25),
    [anon_sym_load] = ACTIONS(25),
    [anon_sym_read] = ACTIONS(25),
    [anon_sym_temperature] = ACTIONS(25),
    [anon_sym_generator] = ACTIONS(25),
    [anon_sym_drift] = ACTIONS(25),
    [anon_sym_piece] = ACTIONS(25),
    [anon_sym_readings] = ACTIONS(25),
    [anon_sym_resonance] = ACTIONS(25),
    [anon_sym_delay] = ACTIONS(25),
    [anon_sym_phase] = ACTIONS(25),
    [anon_sym_adapter] = ACTIONS(25),
    [anon_sym_position] = ACTIONS(25),
    [anon_sym_ground] = ACTIONS(25),
    [anon_sym_place] = ACTIONS(25),
    [anon_sym_under] = ACTIONS(25),
    [anon_sym_beside] = ACTIONS(25),
    [anon_sym_spot] = ACTIONS(25),
    [anon_sym_alone] = ACTIONS(25),
    [anon_sym_site_DASHnoise] = ACTIONS(25),
    [anon_sym_transmitter] = ACTIONS(25),
    [anon_sym_receiver] = ACTIONS(25),
    [anon_sym_transceiver] = ACTIONS(25),
    [anon_sym_run] = ACTIONS(25),
    [anon_sym_jumper] = ACTIONS(25),
    [anon_sym_tail] = ACTIONS(25),
    [anon_sym_pad] = ACTIONS(25),
    [anon_sym_filter] = ACTIONS(25),
    [anon_sym_isolator] = ACTIONS(25),
    [anon_sym_circulator] = ACTIONS(25),
    [anon_sym_protector] = ACTIONS(25),
    [anon_sym_switch] = ACTIONS(25),
    [anon_sym_coupler] = ACTIONS(25),
    [anon_sym_meter] = ACTIONS(25),
    [anon_sym_balun] = ACTIONS(25),
    [anon_sym_tuner] = ACTIONS(25),
    [anon_sym_duplexer] = ACTIONS(25),
    [anon_sym_diplexer] = ACTIONS(25),
    [anon_sym_combiner] = ACTIONS(25),
    [anon_sym_divider] = ACTIONS(25),
    [anon_sym_amplifier] = ACTIONS(25),
    [anon_sym_preamplifier] = ACTIONS(25),
    [anon_sym_antenna] = ACTIONS(25),
    [anon_sym_branches] = ACTIONS(25),
    [anon_sym_expect] = ACTIONS(25),
    [anon_sym_authority] = ACTIONS(25),
    [anon_sym_jurisdiction] = ACTIONS(25),
    [anon_sym_service] = ACTIONS(25),
    [anon_sym_edition] = ACTIONS(25),
    [anon_sym_dated] = ACTIONS(25),
    [anon_sym_until] = ACTIONS(25),
    [anon_sym_holder] = ACTIONS(25),
    [anon_sym_class] = ACTIONS(25),
    [anon_sym_ask] = ACTIONS(25),
    [anon_sym_threshold] = ACTIONS(25),
    [anon_sym_fixed] = ACTIONS(25),
    [anon_sym_condition] = ACTIONS(25),
    [anon_sym_reflection] = ACTIONS(25),
    [anon_sym_field] = ACTIONS(25),
    [anon_sym_hop] = ACTIONS(25),
    [anon_sym_profile] = ACTIONS(25),
    [anon_sym_distance] = ACTIONS(25),
    [anon_sym_k_DASHfactor] = ACTIONS(25),
    [anon_sym_need] = ACTIONS(25),
    [anon_sym_model] = ACTIONS(25),
    [anon_sym_coverage] = ACTIONS(25),
    [anon_sym_take] = ACTIONS(25),
    [anon_sym_put] = ACTIONS(25),
    [anon_sym_branch] = ACTIONS(25),
    [anon_sym_inner] = ACTIONS(25),
    [anon_sym_outer] = ACTIONS(25),
    [anon_sym_permittivity] = ACTIONS(25),
    [anon_sym_loss_DASHtangent] = ACTIONS(25),
    [anon_sym_strand] = ACTIONS(25),
    [anon_sym_strand_DASHdiameter] = ACTIONS(25),
    [anon_sym_braid] = ACTIONS(25),
    [anon_sym_resistivity] = ACTIONS(25),
    [anon_sym_inner_DASHresistivity] = ACTIONS(25),
    [anon_sym_outer_DASHresistivity] = ACTIONS(25),
    [anon_sym_diameter] = ACTIONS(25),
    [anon_sym_spacing] = ACTIONS(25),
    [anon_sym_baseline] = ACTIONS(25),
    [anon_sym_through] = ACTIONS(25),
    [anon_sym_open] = ACTIONS(25),
    [anon_sym_short] = ACTIONS(25),
    [anon_sym_equalise] = ACTIONS(25),
    [anon_sym_power] = ACTIONS(25),
    [anon_sym_mode] = ACTIONS(25),
    [anon_sym_duty] = ACTIONS(25),
    [anon_sym_keyed] = ACTIONS(25),
    [anon_sym_foldback] = ACTIONS(25),
    [anon_sym_bandwidth] = ACTIONS(25),
    [anon_sym_sensitivity] = ACTIONS(25),
    [anon_sym_blocking] = ACTIONS(25),
    [anon_sym_efficiency] = ACTIONS(25),
    [anon_sym_height] = ACTIONS(25),
    [anon_sym_pattern] = ACTIONS(25),
    [anon_sym_haat] = ACTIONS(25),
    [anon_sym_radius] = ACTIONS(25),
    [anon_sym_fails] = ACTIONS(25),
    [anon_sym_GHz] = ACTIONS(25),
    [anon_sym_Hz] = ACTIONS(25),
    [anon_sym_MHz] = ACTIONS(25),
    [anon_sym_above] = ACTIONS(25),
    [anon_sym_added] = ACTIONS(25),
    [anon_sym_after] = ACTIONS(25),
    [anon_sym_against] = ACTIONS(25),
    [anon_sym_agl] = ACTIONS(25),
    [anon_sym_allocated] = ACTIONS(25),
    [anon_sym_am] = ACTIONS(25),
    [anon_sym_ambient] = ACTIONS(25),
    [anon_sym_amsl] = ACTIONS(25),
    [anon_sym_apart] = ACTIONS(25),
    [anon_sym_at] = ACTIONS(25),
    [anon_sym_averaging] = ACTIONS(25),
    [anon_sym_below] = ACTIONS(25),
    [anon_sym_beyond] = ACTIONS(25),
    [anon_sym_blank] = ACTIONS(25),
    [anon_sym_bow] = ACTIONS(25),
    [anon_sym_bullington] = ACTIONS(25),
    [anon_sym_by] = ACTIONS(25),
    [anon_sym_carrier] = ACTIONS(25),
    [anon_sym_cascade] = ACTIONS(25),
    [anon_sym_city] = ACTIONS(25),
    [anon_sym_clad] = ACTIONS(25),
    [anon_sym_confidence] = ACTIONS(25),
    [anon_sym_corrected] = ACTIONS(25),
    [anon_sym_cw] = ACTIONS(25),
    [anon_sym_dB] = ACTIONS(25),
    [anon_sym_dBW] = ACTIONS(25),
    [anon_sym_dBd] = ACTIONS(25),
    [anon_sym_dBi] = ACTIONS(25),
    [anon_sym_dBm] = ACTIONS(25),
    [anon_sym_data] = ACTIONS(25),
    [anon_sym_date] = ACTIONS(25),
    [anon_sym_datum] = ACTIONS(25),
    [anon_sym_dc_DASHinput] = ACTIONS(25),
    [anon_sym_degrees] = ACTIONS(25),
    [anon_sym_delivered] = ACTIONS(25),
    [anon_sym_desense] = ACTIONS(25),
    [anon_sym_displayed] = ACTIONS(25),
    [anon_sym_dms] = ACTIONS(25),
    [anon_sym_down] = ACTIONS(25),
    [anon_sym_eirp] = ACTIONS(25),
    [anon_sym_elevation] = ACTIONS(25),
    [anon_sym_ends] = ACTIONS(25),
    [anon_sym_erp] = ACTIONS(25),
    [anon_sym_etrs89] = ACTIONS(25),
    [anon_sym_figure] = ACTIONS(25),
    [anon_sym_fm] = ACTIONS(25),
    [anon_sym_for] = ACTIONS(25),
    [anon_sym_forward] = ACTIONS(25),
    [anon_sym_free_DASHspace] = ACTIONS(25),
    [anon_sym_frequency] = ACTIONS(25),
    [anon_sym_ft] = ACTIONS(25),
    [anon_sym_full] = ACTIONS(25),
    [anon_sym_guess] = ACTIONS(25),
    [anon_sym_hata_DASHopen] = ACTIONS(25),
    [anon_sym_hata_DASHsuburban] = ACTIONS(25),
    [anon_sym_hata_DASHurban] = ACTIONS(25),
    [anon_sym_height_DASHamsl] = ACTIONS(25),
    [anon_sym_horizontal] = ACTIONS(25),
    [anon_sym_if] = ACTIONS(25),
    [anon_sym_in] = ACTIONS(25),
    [anon_sym_input] = ACTIONS(25),
    [anon_sym_instead] = ACTIONS(25),
    [anon_sym_k] = ACTIONS(25),
    [anon_sym_kHz] = ACTIONS(25),
    [anon_sym_kW] = ACTIONS(25),
    [anon_sym_km] = ACTIONS(25),
    [anon_sym_latitude] = ACTIONS(25),
    [anon_sym_longitude] = ACTIONS(25),
    [anon_sym_m] = ACTIONS(25),
    [anon_sym_mW] = ACTIONS(25),
    [anon_sym_maximum] = ACTIONS(25),
    [anon_sym_mean] = ACTIONS(25),
    [anon_sym_medium] = ACTIONS(25),
    [anon_sym_nad27] = ACTIONS(25),
    [anon_sym_nad83] = ACTIONS(25),
    [anon_sym_net] = ACTIONS(25),
    [anon_sym_no] = ACTIONS(25),
    [anon_sym_nominal] = ACTIONS(25),
    [anon_sym_occupational] = ACTIONS(25),
    [anon_sym_of] = ACTIONS(25),
    [anon_sym_offset] = ACTIONS(25),
    [anon_sym_on] = ACTIONS(25),
    [anon_sym_one_DASHedge] = ACTIONS(25),
    [anon_sym_out] = ACTIONS(25),
    [anon_sym_output] = ACTIONS(25),
    [anon_sym_over] = ACTIONS(25),
    [anon_sym_pep] = ACTIONS(25),
    [anon_sym_per] = ACTIONS(25),
    [anon_sym_places] = ACTIONS(25),
    [anon_sym_public] = ACTIONS(25),
    [anon_sym_quiet_DASHrural] = ACTIONS(25),
    [anon_sym_quieting] = ACTIONS(25),
    [anon_sym_rated] = ACTIONS(25),
    [anon_sym_reactance] = ACTIONS(25),
    [anon_sym_reading] = ACTIONS(25),
    [anon_sym_realized] = ACTIONS(25),
    [anon_sym_receive_DASHfrequency] = ACTIONS(25),
    [anon_sym_receive_DASHloss] = ACTIONS(25),
    [anon_sym_reference] = ACTIONS(25),
    [anon_sym_reflected] = ACTIONS(25),
    [anon_sym_rejects] = ACTIONS(25),
    [anon_sym_residential] = ACTIONS(25),
    [anon_sym_rural] = ACTIONS(25),
    [anon_sym_series] = ACTIONS(25),
    [anon_sym_shared] = ACTIONS(25),
    [anon_sym_sheet] = ACTIONS(25),
    [anon_sym_shunt] = ACTIONS(25),
    [anon_sym_sinad] = ACTIONS(25),
    [anon_sym_since] = ACTIONS(25),
    [anon_sym_snr] = ACTIONS(25),
    [anon_sym_spread] = ACTIONS(25),
    [anon_sym_ssb] = ACTIONS(25),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(25),
    [anon_sym_then] = ACTIONS(25),
    [anon_sym_title] = ACTIONS(25),
    [anon_sym_to] = ACTIONS(25),
    [anon_sym_total] = ACTIONS(25),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(25),
    [anon_sym_two_DASHray] = ACTIONS(25),
    [anon_sym_typical] = ACTIONS(25),
    [anon_sym_up] = ACTIONS(25),
    [anon_sym_vertical] = ACTIONS(25),
    [anon_sym_way] = ACTIONS(25),
    [anon_sym_wet] = ACTIONS(25),
    [anon_sym_wgs84] = ACTIONS(25),
    [anon_sym_with] = ACTIONS(25),
    [anon_sym_within] = ACTIONS(25),
    [anon_sym_yes] = ACTIONS(25),
    [anon_sym_COMMA] = ACTIONS(23),
    [anon_sym_EQ] = ACTIONS(23),
    [anon_sym_u00b1] = ACTIONS(23),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(23),
    [anon_sym_LPAREN] = ACTIONS(23),
    [anon_sym_DASH] = ACTIONS(25),
    [anon_sym_u2212] = ACTIONS(25),
    [anon_sym_u2013] = ACTIONS(25),
    [anon_sym_PLUS] = ACTIONS(25),
    [anon_sym_STAR] = ACTIONS(23),
    [anon_sym_SLASH] = ACTIONS(25),
    [anon_sym_CARET] = ACTIONS(23),
    [sym__glued] = ACTIONS(25),
    [sym_date] = ACTIONS(25),
    [sym_dms] = ACTIONS(23),
    [sym_number] = ACTIONS(25),
    [sym_digit_name] = ACTIONS(25),
    [sym_string] = ACTIONS(23),
    [sym_comment] = ACTIONS(3),
  },
  [14] = {
    [ts_builtin_sym_end] = ACTIONS(133),
    [sym_name] = ACTIONS(135),
    [aux_sym__end_token1] = ACTIONS(133),
    [anon_sym_SEMI] = ACTIONS(133),
    [anon_sym_LBRACE] = ACTIONS(133),
    [anon_sym_RBRACE] = ACTIONS(133),
    [anon_sym_use] = ACTIONS(135),
    [anon_sym_band] = ACTIONS(135),
    [anon_sym_let] = ACTIONS(135),
    [anon_sym_cable] = ACTIONS(135),
    [anon_sym_connector] = ACTIONS(135),
    [anon_sym_device] = ACTIONS(135),
    [anon_sym_instrument] = ACTIONS(135),
    [anon_sym_session] = ACTIONS(135),
    [anon_sym_station] = ACTIONS(135),
    [anon_sym_chain] = ACTIONS(135),
    [anon_sym_licence] = ACTIONS(135),
    [anon_sym_rules] = ACTIONS(135),
    [anon_sym_link] = ACTIONS(135),
    [anon_sym_variant] = ACTIONS(135),
    [anon_sym_accept] = ACTIONS(135),
    [anon_sym_transmit] = ACTIONS(135),
    [anon_sym_receive] = ACTIONS(135),
    [anon_sym_impedance] = ACTIONS(135),
    [anon_sym_velocity] = ACTIONS(135),
    [anon_sym_loss] = ACTIONS(135),
    [anon_sym_construction] = ACTIONS(135),
    [anon_sym_wires] = ACTIONS(135),
    [anon_sym_valid] = ACTIONS(135),
    [anon_sym_accuracy] = ACTIONS(135),
    [anon_sym_rating] = ACTIONS(135),
    [anon_sym_voltage] = ACTIONS(135),
    [anon_sym_size] = ACTIONS(135),
    [anon_sym_conductor] = ACTIONS(135),
    [anon_sym_source] = ACTIONS(135),
    [anon_sym_recalled] = ACTIONS(135),
    [anon_sym_joins] = ACTIONS(135),
    [anon_sym_limit] = ACTIONS(135),
    [anon_sym_family] = ACTIONS(135),
    [anon_sym_bump] = ACTIONS(135),
    [anon_sym_return_DASHloss] = ACTIONS(135),
    [anon_sym_swr] = ACTIONS(135),
    [anon_sym_kind] = ACTIONS(135),
    [anon_sym_high] = ACTIONS(135),
    [anon_sym_low] = ACTIONS(135),
    [anon_sym_port] = ACTIONS(135),
    [anon_sym_from] = ACTIONS(135),
    [anon_sym_isolation] = ACTIONS(135),
    [anon_sym_ratio] = ACTIONS(135),
    [anon_sym_split] = ACTIONS(135),
    [anon_sym_tee] = ACTIONS(135),
    [anon_sym_reversed] = ACTIONS(135),
    [anon_sym_passes] = ACTIONS(135),
    [anon_sym_gain] = ACTIONS(135),
    [anon_sym_noise] = ACTIONS(135),
    [anon_sym_excess] = ACTIONS(135),
    [anon_sym_ways] = ACTIONS(135),
    [anon_sym_coupled] = ACTIONS(135),
    [anon_sym_calibrated] = ACTIONS(135),
    [anon_sym_scale] = ACTIONS(135),
    [anon_sym_resolution] = ACTIONS(135),
    [anon_sym_due] = ACTIONS(135),
    [anon_sym_linearity] = ACTIONS(135),
    [anon_sym_repeatability] = ACTIONS(135),
    [anon_sym_directivity] = ACTIONS(135),
    [anon_sym_certificate] = ACTIONS(135),
    [anon_sym_load] = ACTIONS(135),
    [anon_sym_read] = ACTIONS(135),
    [anon_sym_temperature] = ACTIONS(135),
    [anon_sym_generator] = ACTIONS(135),
    [anon_sym_drift] = ACTIONS(135),
    [anon_sym_piece] = ACTIONS(135),
    [anon_sym_readings] = ACTIONS(135),
    [anon_sym_resonance] = ACTIONS(135),
    [anon_sym_delay] = ACTIONS(135),
    [anon_sym_phase] = ACTIONS(135),
    [anon_sym_adapter] = ACTIONS(135),
    [anon_sym_position] = ACTIONS(135),
    [anon_sym_ground] = ACTIONS(135),
    [anon_sym_place] = ACTIONS(135),
    [anon_sym_under] = ACTIONS(135),
    [anon_sym_beside] = ACTIONS(135),
    [anon_sym_spot] = ACTIONS(135),
    [anon_sym_alone] = ACTIONS(135),
    [anon_sym_site_DASHnoise] = ACTIONS(135),
    [anon_sym_transmitter] = ACTIONS(135),
    [anon_sym_receiver] = ACTIONS(135),
    [anon_sym_transceiver] = ACTIONS(135),
    [anon_sym_run] = ACTIONS(135),
    [anon_sym_jumper] = ACTIONS(135),
    [anon_sym_tail] = ACTIONS(135),
    [anon_sym_pad] = ACTIONS(135),
    [anon_sym_filter] = ACTIONS(135),
    [anon_sym_isolator] = ACTIONS(135),
    [anon_sym_circulator] = ACTIONS(135),
    [anon_sym_protector] = ACTIONS(135),
    [anon_sym_switch] = ACTIONS(135),
    [anon_sym_coupler] = ACTIONS(135),
    [anon_sym_meter] = ACTIONS(135),
    [anon_sym_balun] = ACTIONS(135),
    [anon_sym_tuner] = ACTIONS(135),
    [anon_sym_duplexer] = ACTIONS(135),
    [anon_sym_diplexer] = ACTIONS(135),
    [anon_sym_combiner] = ACTIONS(135),
    [anon_sym_divider] = ACTIONS(135),
    [anon_sym_amplifier] = ACTIONS(135),
    [anon_sym_preamplifier] = ACTIONS(135),
    [anon_sym_antenna] = ACTIONS(135),
    [anon_sym_branches] = ACTIONS(135),
    [anon_sym_expect] = ACTIONS(135),
    [anon_sym_authority] = ACTIONS(135),
    [anon_sym_jurisdiction] = ACTIONS(135),
    [anon_sym_service] = ACTIONS(135),
    [anon_sym_edition] = ACTIONS(135),
    [anon_sym_dated] = ACTIONS(135),
    [anon_sym_until] = ACTIONS(135),
    [anon_sym_holder] = ACTIONS(135),
    [anon_sym_class] = ACTIONS(135),
    [anon_sym_ask] = ACTIONS(135),
    [anon_sym_threshold] = ACTIONS(135),
    [anon_sym_fixed] = ACTIONS(135),
    [anon_sym_condition] = ACTIONS(135),
    [anon_sym_reflection] = ACTIONS(135),
    [anon_sym_field] = ACTIONS(135),
    [anon_sym_hop] = ACTIONS(135),
    [anon_sym_profile] = ACTIONS(135),
    [anon_sym_distance] = ACTIONS(135),
    [anon_sym_k_DASHfactor] = ACTIONS(135),
    [anon_sym_need] = ACTIONS(135),
    [anon_sym_model] = ACTIONS(135),
    [anon_sym_coverage] = ACTIONS(135),
    [anon_sym_take] = ACTIONS(135),
    [anon_sym_put] = ACTIONS(135),
    [anon_sym_branch] = ACTIONS(135),
    [anon_sym_inner] = ACTIONS(135),
    [anon_sym_outer] = ACTIONS(135),
    [anon_sym_permittivity] = ACTIONS(135),
    [anon_sym_loss_DASHtangent] = ACTIONS(135),
    [anon_sym_strand] = ACTIONS(135),
    [anon_sym_strand_DASHdiameter] = ACTIONS(135),
    [anon_sym_braid] = ACTIONS(135),
    [anon_sym_resistivity] = ACTIONS(135),
    [anon_sym_inner_DASHresistivity] = ACTIONS(135),
    [anon_sym_outer_DASHresistivity] = ACTIONS(135),
    [anon_sym_diameter] = ACTIONS(135),
    [anon_sym_spacing] = ACTIONS(135),
    [anon_sym_baseline] = ACTIONS(135),
    [anon_sym_through] = ACTIONS(135),
    [anon_sym_open] = ACTIONS(135),
    [anon_sym_short] = ACTIONS(135),
    [anon_sym_equalise] = ACTIONS(135),
    [anon_sym_power] = ACTIONS(135),
    [anon_sym_mode] = ACTIONS(135),
    [anon_sym_duty] = ACTIONS(135),
    [anon_sym_keyed] = ACTIONS(135),
    [anon_sym_foldback] = ACTIONS(135),
    [anon_sym_bandwidth] = ACTIONS(135),
    [anon_sym_sensitivity] = ACTIONS(135),
    [anon_sym_blocking] = ACTIONS(135),
    [anon_sym_efficiency] = ACTIONS(135),
    [anon_sym_height] = ACTIONS(135),
    [anon_sym_pattern] = ACTIONS(135),
    [anon_sym_haat] = ACTIONS(135),
    [anon_sym_radius] = ACTIONS(135),
    [anon_sym_fails] = ACTIONS(135),
    [anon_sym_GHz] = ACTIONS(135),
    [anon_sym_Hz] = ACTIONS(135),
    [anon_sym_MHz] = ACTIONS(135),
    [anon_sym_above] = ACTIONS(135),
    [anon_sym_added] = ACTIONS(135),
    [anon_sym_after] = ACTIONS(135),
    [anon_sym_against] = ACTIONS(135),
    [anon_sym_agl] = ACTIONS(135),
    [anon_sym_allocated] = ACTIONS(135),
    [anon_sym_am] = ACTIONS(135),
    [anon_sym_ambient] = ACTIONS(135),
    [anon_sym_amsl] = ACTIONS(135),
    [anon_sym_apart] = ACTIONS(135),
    [anon_sym_at] = ACTIONS(135),
    [anon_sym_averaging] = ACTIONS(135),
    [anon_sym_below] = ACTIONS(135),
    [anon_sym_beyond] = ACTIONS(135),
    [anon_sym_blank] = ACTIONS(135),
    [anon_sym_bow] = ACTIONS(135),
    [anon_sym_bullington] = ACTIONS(135),
    [anon_sym_by] = ACTIONS(135),
    [anon_sym_carrier] = ACTIONS(135),
    [anon_sym_cascade] = ACTIONS(135),
    [anon_sym_city] = ACTIONS(135),
    [anon_sym_clad] = ACTIONS(135),
    [anon_sym_confidence] = ACTIONS(135),
    [anon_sym_corrected] = ACTIONS(135),
    [anon_sym_cw] = ACTIONS(135),
    [anon_sym_dB] = ACTIONS(135),
    [anon_sym_dBW] = ACTIONS(135),
    [anon_sym_dBd] = ACTIONS(135),
    [anon_sym_dBi] = ACTIONS(135),
    [anon_sym_dBm] = ACTIONS(135),
    [anon_sym_data] = ACTIONS(135),
    [anon_sym_date] = ACTIONS(135),
    [anon_sym_datum] = ACTIONS(135),
    [anon_sym_dc_DASHinput] = ACTIONS(135),
    [anon_sym_degrees] = ACTIONS(135),
    [anon_sym_delivered] = ACTIONS(135),
    [anon_sym_desense] = ACTIONS(135),
    [anon_sym_displayed] = ACTIONS(135),
    [anon_sym_dms] = ACTIONS(135),
    [anon_sym_down] = ACTIONS(135),
    [anon_sym_eirp] = ACTIONS(135),
    [anon_sym_elevation] = ACTIONS(135),
    [anon_sym_ends] = ACTIONS(135),
    [anon_sym_erp] = ACTIONS(135),
    [anon_sym_etrs89] = ACTIONS(135),
    [anon_sym_figure] = ACTIONS(135),
    [anon_sym_fm] = ACTIONS(135),
    [anon_sym_for] = ACTIONS(135),
    [anon_sym_forward] = ACTIONS(135),
    [anon_sym_free_DASHspace] = ACTIONS(135),
    [anon_sym_frequency] = ACTIONS(135),
    [anon_sym_ft] = ACTIONS(135),
    [anon_sym_full] = ACTIONS(135),
    [anon_sym_guess] = ACTIONS(135),
    [anon_sym_hata_DASHopen] = ACTIONS(135),
    [anon_sym_hata_DASHsuburban] = ACTIONS(135),
    [anon_sym_hata_DASHurban] = ACTIONS(135),
    [anon_sym_height_DASHamsl] = ACTIONS(135),
    [anon_sym_horizontal] = ACTIONS(135),
    [anon_sym_if] = ACTIONS(135),
    [anon_sym_in] = ACTIONS(135),
    [anon_sym_input] = ACTIONS(135),
    [anon_sym_instead] = ACTIONS(135),
    [anon_sym_k] = ACTIONS(135),
    [anon_sym_kHz] = ACTIONS(135),
    [anon_sym_kW] = ACTIONS(135),
    [anon_sym_km] = ACTIONS(135),
    [anon_sym_latitude] = ACTIONS(135),
    [anon_sym_longitude] = ACTIONS(135),
    [anon_sym_m] = ACTIONS(135),
    [anon_sym_mW] = ACTIONS(135),
    [anon_sym_maximum] = ACTIONS(135),
    [anon_sym_mean] = ACTIONS(135),
    [anon_sym_medium] = ACTIONS(135),
    [anon_sym_nad27] = ACTIONS(135),
    [anon_sym_nad83] = ACTIONS(135),
    [anon_sym_net] = ACTIONS(135),
    [anon_sym_no] = ACTIONS(135),
    [anon_sym_nominal] = ACTIONS(135),
    [anon_sym_occupational] = ACTIONS(135),
    [anon_sym_of] = ACTIONS(135),
    [anon_sym_offset] = ACTIONS(135),
    [anon_sym_on] = ACTIONS(135),
    [anon_sym_one_DASHedge] = ACTIONS(135),
    [anon_sym_out] = ACTIONS(135),
    [anon_sym_output] = ACTIONS(135),
    [anon_sym_over] = ACTIONS(135),
    [anon_sym_pep] = ACTIONS(135),
    [anon_sym_per] = ACTIONS(135),
    [anon_sym_places] = ACTIONS(135),
    [anon_sym_public] = ACTIONS(135),
    [anon_sym_quiet_DASHrural] = ACTIONS(135),
    [anon_sym_quieting] = ACTIONS(135),
    [anon_sym_rated] = ACTIONS(135),
    [anon_sym_reactance] = ACTIONS(135),
    [anon_sym_reading] = ACTIONS(135),
    [anon_sym_realized] = ACTIONS(135),
    [anon_sym_receive_DASHfrequency] = ACTIONS(135),
    [anon_sym_receive_DASHloss] = ACTIONS(135),
    [anon_sym_reference] = ACTIONS(135),
    [anon_sym_reflected] = ACTIONS(135),
    [anon_sym_rejects] = ACTIONS(135),
    [anon_sym_residential] = ACTIONS(135),
    [anon_sym_rural] = ACTIONS(135),
    [anon_sym_series] = ACTIONS(135),
    [anon_sym_shared] = ACTIONS(135),
    [anon_sym_sheet] = ACTIONS(135),
    [anon_sym_shunt] = ACTIONS(135),
    [anon_sym_sinad] = ACTIONS(135),
    [anon_sym_since] = ACTIONS(135),
    [anon_sym_snr] = ACTIONS(135),
    [anon_sym_spread] = ACTIONS(135),
    [anon_sym_ssb] = ACTIONS(135),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(135),
    [anon_sym_then] = ACTIONS(135),
    [anon_sym_title] = ACTIONS(135),
    [anon_sym_to] = ACTIONS(135),
    [anon_sym_total] = ACTIONS(135),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(135),
    [anon_sym_two_DASHray] = ACTIONS(135),
    [anon_sym_typical] = ACTIONS(135),
    [anon_sym_up] = ACTIONS(135),
    [anon_sym_vertical] = ACTIONS(135),
    [anon_sym_way] = ACTIONS(135),
    [anon_sym_wet] = ACTIONS(135),
    [anon_sym_wgs84] = ACTIONS(135),
    [anon_sym_with] = ACTIONS(135),
    [anon_sym_within] = ACTIONS(135),
    [anon_sym_yes] = ACTIONS(135),
    [anon_sym_COMMA] = ACTIONS(133),
    [anon_sym_EQ] = ACTIONS(133),
    [anon_sym_u00b1] = ACTIONS(133),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(133),
    [anon_sym_LPAREN] = ACTIONS(133),
    [anon_sym_DASH] = ACTIONS(135),
    [anon_sym_u2212] = ACTIONS(135),
    [anon_sym_u2013] = ACTIONS(135),
    [anon_sym_PLUS] = ACTIONS(135),
    [anon_sym_STAR] = ACTIONS(133),
    [anon_sym_SLASH] = ACTIONS(135),
    [anon_sym_CARET] = ACTIONS(133),
    [sym__glued] = ACTIONS(135),
    [sym_date] = ACTIONS(135),
    [sym_dms] = ACTIONS(133),
    [sym_number] = ACTIONS(135),
    [sym_digit_name] = ACTIONS(135),
    [sym_string] = ACTIONS(133),
    [sym_comment] = ACTIONS(3),
  },
  [15] = {
    [ts_builtin_sym_end] = ACTIONS(137),
    [sym_name] = ACTIONS(139),
    [aux_sym__end_token1] = ACTIONS(137),
    [anon_sym_SEMI] = ACTIONS(137),
    [anon_sym_LBRACE] = ACTIONS(137),
    [anon_sym_RBRACE] = ACTIONS(137),
    [anon_sym_use] = ACTIONS(139),
    [anon_sym_band] = ACTIONS(139),
    [anon_sym_let] = ACTIONS(139),
    [anon_sym_cable] = ACTIONS(139),
    [anon_sym_connector] = ACTIONS(139),
    [anon_sym_device] = ACTIONS(139),
    [anon_sym_instrument] = ACTIONS(139),
    [anon_sym_session] = ACTIONS(139),
    [anon_sym_station] = ACTIONS(139),
    [anon_sym_chain] = ACTIONS(139),
    [anon_sym_licence] = ACTIONS(139),
    [anon_sym_rules] = ACTIONS(139),
    [anon_sym_link] = ACTIONS(139),
    [anon_sym_variant] = ACTIONS(139),
    [anon_sym_accept] = ACTIONS(139),
    [anon_sym_transmit] = ACTIONS(139),
    [anon_sym_receive] = ACTIONS(139),
    [anon_sym_impedance] = ACTIONS(139),
    [anon_sym_velocity] = ACTIONS(139),
    [anon_sym_loss] = ACTIONS(139),
    [anon_sym_construction] = ACTIONS(139),
    [anon_sym_wires] = ACTIONS(139),
    [anon_sym_valid] = ACTIONS(139),
    [anon_sym_accuracy] = ACTIONS(139),
    [anon_sym_rating] = ACTIONS(139),
    [anon_sym_voltage] = ACTIONS(139),
    [anon_sym_size] = ACTIONS(139),
    [anon_sym_conductor] = ACTIONS(139),
    [anon_sym_source] = ACTIONS(139),
    [anon_sym_recalled] = ACTIONS(139),
    [anon_sym_joins] = ACTIONS(139),
    [anon_sym_limit] = ACTIONS(139),
    [anon_sym_family] = ACTIONS(139),
    [anon_sym_bump] = ACTIONS(139),
    [anon_sym_return_DASHloss] = ACTIONS(139),
    [anon_sym_swr] = ACTIONS(139),
    [anon_sym_kind] = ACTIONS(139),
    [anon_sym_high] = ACTIONS(139),
    [anon_sym_low] = ACTIONS(139),
    [anon_sym_port] = ACTIONS(139),
    [anon_sym_from] = ACTIONS(139),
    [anon_sym_isolation] = ACTIONS(139),
    [anon_sym_ratio] = ACTIONS(139),
    [anon_sym_split] = ACTIONS(139),
    [anon_sym_tee] = ACTIONS(139),
    [anon_sym_reversed] = ACTIONS(139),
    [anon_sym_passes] = ACTIONS(139),
    [anon_sym_gain] = ACTIONS(139),
    [anon_sym_noise] = ACTIONS(139),
    [anon_sym_excess] = ACTIONS(139),
    [anon_sym_ways] = ACTIONS(139),
    [anon_sym_coupled] = ACTIONS(139),
    [anon_sym_calibrated] = ACTIONS(139),
    [anon_sym_scale] = ACTIONS(139),
    [anon_sym_resolution] = ACTIONS(139),
    [anon_sym_due] = ACTIONS(139),
    [anon_sym_linearity] = ACTIONS(139),
    [anon_sym_repeatability] = ACTIONS(139),
    [anon_sym_directivity] = ACTIONS(139),
    [anon_sym_certificate] = ACTIONS(139),
    [anon_sym_load] = ACTIONS(139),
    [anon_sym_read] = ACTIONS(139),
    [anon_sym_temperature] = ACTIONS(139),
    [anon_sym_generator] = ACTIONS(139),
    [anon_sym_drift] = ACTIONS(139),
    [anon_sym_piece] = ACTIONS(139),
    [anon_sym_readings] = ACTIONS(139),
    [anon_sym_resonance] = ACTIONS(139),
    [anon_sym_delay] = ACTIONS(139),
    [anon_sym_phase] = ACTIONS(139),
    [anon_sym_adapter] = ACTIONS(139),
    [anon_sym_position] = ACTIONS(139),
    [anon_sym_ground] = ACTIONS(139),
    [anon_sym_place] = ACTIONS(139),
    [anon_sym_under] = ACTIONS(139),
    [anon_sym_beside] = ACTIONS(139),
    [anon_sym_spot] = ACTIONS(139),
    [anon_sym_alone] = ACTIONS(139),
    [anon_sym_site_DASHnoise] = ACTIONS(139),
    [anon_sym_transmitter] = ACTIONS(139),
    [anon_sym_receiver] = ACTIONS(139),
    [anon_sym_transceiver] = ACTIONS(139),
    [anon_sym_run] = ACTIONS(139),
    [anon_sym_jumper] = ACTIONS(139),
    [anon_sym_tail] = ACTIONS(139),
    [anon_sym_pad] = ACTIONS(139),
    [anon_sym_filter] = ACTIONS(139),
    [anon_sym_isolator] = ACTIONS(139),
    [anon_sym_circulator] = ACTIONS(139),
    [anon_sym_protector] = ACTIONS(139),
    [anon_sym_switch] = ACTIONS(139),
    [anon_sym_coupler] = ACTIONS(139),
    [anon_sym_meter] = ACTIONS(139),
    [anon_sym_balun] = ACTIONS(139),
    [anon_sym_tuner] = ACTIONS(139),
    [anon_sym_duplexer] = ACTIONS(139),
    [anon_sym_diplexer] = ACTIONS(139),
    [anon_sym_combiner] = ACTIONS(139),
    [anon_sym_divider] = ACTIONS(139),
    [anon_sym_amplifier] = ACTIONS(139),
    [anon_sym_preamplifier] = ACTIONS(139),
    [anon_sym_antenna] = ACTIONS(139),
    [anon_sym_branches] = ACTIONS(139),
    [anon_sym_expect] = ACTIONS(139),
    [anon_sym_authority] = ACTIONS(139),
    [anon_sym_jurisdiction] = ACTIONS(139),
    [anon_sym_service] = ACTIONS(139),
    [anon_sym_edition] = ACTIONS(139),
    [anon_sym_dated] = ACTIONS(139),
    [anon_sym_until] = ACTIONS(139),
    [anon_sym_holder] = ACTIONS(139),
    [anon_sym_class] = ACTIONS(139),
    [anon_sym_ask] = ACTIONS(139),
    [anon_sym_threshold] = ACTIONS(139),
    [anon_sym_fixed] = ACTIONS(139),
    [anon_sym_condition] = ACTIONS(139),
    [anon_sym_reflection] = ACTIONS(139),
    [anon_sym_field] = ACTIONS(139),
    [anon_sym_hop] = ACTIONS(139),
    [anon_sym_profile] = ACTIONS(139),
    [anon_sym_distance] = ACTIONS(139),
    [anon_sym_k_DASHfactor] = ACTIONS(139),
    [anon_sym_need] = ACTIONS(139),
    [anon_sym_model] = ACTIONS(139),
    [anon_sym_coverage] = ACTIONS(139),
    [anon_sym_take] = ACTIONS(139),
    [anon_sym_put] = ACTIONS(139),
    [anon_sym_branch] = ACTIONS(139),
    [anon_sym_inner] = ACTIONS(139),
    [anon_sym_outer] = ACTIONS(139),
    [anon_sym_permittivity] = ACTIONS(139),
    [anon_sym_loss_DASHtangent] = ACTIONS(139),
    [anon_sym_strand] = ACTIONS(139),
    [anon_sym_strand_DASHdiameter] = ACTIONS(139),
    [anon_sym_braid] = ACTIONS(139),
    [anon_sym_resistivity] = ACTIONS(139),
    [anon_sym_inner_DASHresistivity] = ACTIONS(139),
    [anon_sym_outer_DASHresistivity] = ACTIONS(139),
    [anon_sym_diameter] = ACTIONS(139),
    [anon_sym_spacing] = ACTIONS(139),
    [anon_sym_baseline] = ACTIONS(139),
    [anon_sym_through] = ACTIONS(139),
    [anon_sym_open] = ACTIONS(139),
    [anon_sym_short] = ACTIONS(139),
    [anon_sym_equalise] = ACTIONS(139),
    [anon_sym_power] = ACTIONS(139),
    [anon_sym_mode] = ACTIONS(139),
    [anon_sym_duty] = ACTIONS(139),
    [anon_sym_keyed] = ACTIONS(139),
    [anon_sym_foldback] = ACTIONS(139),
    [anon_sym_bandwidth] = ACTIONS(139),
    [anon_sym_sensitivity] = ACTIONS(139),
    [anon_sym_blocking] = ACTIONS(139),
    [anon_sym_efficiency] = ACTIONS(139),
    [anon_sym_height] = ACTIONS(139),
    [anon_sym_pattern] = ACTIONS(139),
    [anon_sym_haat] = ACTIONS(139),
    [anon_sym_radius] = ACTIONS(139),
    [anon_sym_fails] = ACTIONS(139),
    [anon_sym_GHz] = ACTIONS(139),
    [anon_sym_Hz] = ACTIONS(139),
    [anon_sym_MHz] = ACTIONS(139),
    [anon_sym_above] = ACTIONS(139),
    [anon_sym_added] = ACTIONS(139),
    [anon_sym_after] = ACTIONS(139),
    [anon_sym_against] = ACTIONS(139),
    [anon_sym_agl] = ACTIONS(139),
    [anon_sym_allocated] = ACTIONS(139),
    [anon_sym_am] = ACTIONS(139),
    [anon_sym_ambient] = ACTIONS(139),
    [anon_sym_amsl] = ACTIONS(139),
    [anon_sym_apart] = ACTIONS(139),
    [anon_sym_at] = ACTIONS(139),
    [anon_sym_averaging] = ACTIONS(139),
    [anon_sym_below] = ACTIONS(139),
    [anon_sym_beyond] = ACTIONS(139),
    [anon_sym_blank] = ACTIONS(139),
    [anon_sym_bow] = ACTIONS(139),
    [anon_sym_bullington] = ACTIONS(139),
    [anon_sym_by] = ACTIONS(139),
    [anon_sym_carrier] = ACTIONS(139),
    [anon_sym_cascade] = ACTIONS(139),
    [anon_sym_city] = ACTIONS(139),
    [anon_sym_clad] = ACTIONS(139),
    [anon_sym_confidence] = ACTIONS(139),
    [anon_sym_corrected] = ACTIONS(139),
    [anon_sym_cw] = ACTIONS(139),
    [anon_sym_dB] = ACTIONS(139),
    [anon_sym_dBW] = ACTIONS(139),
    [anon_sym_dBd] = ACTIONS(139),
    [anon_sym_dBi] = ACTIONS(139),
    [anon_sym_dBm] = ACTIONS(139),
    [anon_sym_data] = ACTIONS(139),
    [anon_sym_date] = ACTIONS(139),
    [anon_sym_datum] = ACTIONS(139),
    [anon_sym_dc_DASHinput] = ACTIONS(139),
    [anon_sym_degrees] = ACTIONS(139),
    [anon_sym_delivered] = ACTIONS(139),
    [anon_sym_desense] = ACTIONS(139),
    [anon_sym_displayed] = ACTIONS(139),
    [anon_sym_dms] = ACTIONS(139),
    [anon_sym_down] = ACTIONS(139),
    [anon_sym_eirp] = ACTIONS(139),
    [anon_sym_elevation] = ACTIONS(139),
    [anon_sym_ends] = ACTIONS(139),
    [anon_sym_erp] = ACTIONS(139),
    [anon_sym_etrs89] = ACTIONS(139),
    [anon_sym_figure] = ACTIONS(139),
    [anon_sym_fm] = ACTIONS(139),
    [anon_sym_for] = ACTIONS(139),
    [anon_sym_forward] = ACTIONS(139),
    [anon_sym_free_DASHspace] = ACTIONS(139),
    [anon_sym_frequency] = ACTIONS(139),
    [anon_sym_ft] = ACTIONS(139),
    [anon_sym_full] = ACTIONS(139),
    [anon_sym_guess] = ACTIONS(139),
    [anon_sym_hata_DASHopen] = ACTIONS(139),
    [anon_sym_hata_DASHsuburban] = ACTIONS(139),
    [anon_sym_hata_DASHurban] = ACTIONS(139),
    [anon_sym_height_DASHamsl] = ACTIONS(139),
    [anon_sym_horizontal] = ACTIONS(139),
    [anon_sym_if] = ACTIONS(139),
    [anon_sym_in] = ACTIONS(139),
    [anon_sym_input] = ACTIONS(139),
    [anon_sym_instead] = ACTIONS(139),
    [anon_sym_k] = ACTIONS(139),
    [anon_sym_kHz] = ACTIONS(139),
    [anon_sym_kW] = ACTIONS(139),
    [anon_sym_km] = ACTIONS(139),
    [anon_sym_latitude] = ACTIONS(139),
    [anon_sym_longitude] = ACTIONS(139),
    [anon_sym_m] = ACTIONS(139),
    [anon_sym_mW] = ACTIONS(139),
    [anon_sym_maximum] = ACTIONS(139),
    [anon_sym_mean] = ACTIONS(139),
    [anon_sym_medium] = ACTIONS(139),
    [anon_sym_nad27] = ACTIONS(139),
    [anon_sym_nad83] = ACTIONS(139),
    [anon_sym_net] = ACTIONS(139),
    [anon_sym_no] = ACTIONS(139),
    [anon_sym_nominal] = ACTIONS(139),
    [anon_sym_occupational] = ACTIONS(139),
    [anon_sym_of] = ACTIONS(139),
    [anon_sym_offset] = ACTIONS(139),
    [anon_sym_on] = ACTIONS(139),
    [anon_sym_one_DASHedge] = ACTIONS(139),
    [anon_sym_out] = ACTIONS(139),
    [anon_sym_output] = ACTIONS(139),
    [anon_sym_over] = ACTIONS(139),
    [anon_sym_pep] = ACTIONS(139),
    [anon_sym_per] = ACTIONS(139),
    [anon_sym_places] = ACTIONS(139),
    [anon_sym_public] = ACTIONS(139),
    [anon_sym_quiet_DASHrural] = ACTIONS(139),
    [anon_sym_quieting] = ACTIONS(139),
    [anon_sym_rated] = ACTIONS(139),
    [anon_sym_reactance] = ACTIONS(139),
    [anon_sym_reading] = ACTIONS(139),
    [anon_sym_realized] = ACTIONS(139),
    [anon_sym_receive_DASHfrequency] = ACTIONS(139),
    [anon_sym_receive_DASHloss] = ACTIONS(139),
    [anon_sym_reference] = ACTIONS(139),
    [anon_sym_reflected] = ACTIONS(139),
    [anon_sym_rejects] = ACTIONS(139),
    [anon_sym_residential] = ACTIONS(139),
    [anon_sym_rural] = ACTIONS(139),
    [anon_sym_series] = ACTIONS(139),
    [anon_sym_shared] = ACTIONS(139),
    [anon_sym_sheet] = ACTIONS(139),
    [anon_sym_shunt] = ACTIONS(139),
    [anon_sym_sinad] = ACTIONS(139),
    [anon_sym_since] = ACTIONS(139),
    [anon_sym_snr] = ACTIONS(139),
    [anon_sym_spread] = ACTIONS(139),
    [anon_sym_ssb] = ACTIONS(139),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(139),
    [anon_sym_then] = ACTIONS(139),
    [anon_sym_title] = ACTIONS(139),
    [anon_sym_to] = ACTIONS(139),
    [anon_sym_total] = ACTIONS(139),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(139),
    [anon_sym_two_DASHray] = ACTIONS(139),
    [anon_sym_typical] = ACTIONS(139),
    [anon_sym_up] = ACTIONS(139),
    [anon_sym_vertical] = ACTIONS(139),
    [anon_sym_way] = ACTIONS(139),
    [anon_sym_wet] = ACTIONS(139),
    [anon_sym_wgs84] = ACTIONS(139),
    [anon_sym_with] = ACTIONS(139),
    [anon_sym_within] = ACTIONS(139),
    [anon_sym_yes] = ACTIONS(139),
    [anon_sym_COMMA] = ACTIONS(137),
    [anon_sym_EQ] = ACTIONS(137),
    [anon_sym_u00b1] = ACTIONS(137),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(137),
    [anon_sym_LPAREN] = ACTIONS(137),
    [anon_sym_DASH] = ACTIONS(139),
    [anon_sym_u2212] = ACTIONS(139),
    [anon_sym_u2013] = ACTIONS(139),
    [anon_sym_PLUS] = ACTIONS(139),
    [anon_sym_STAR] = ACTIONS(137),
    [anon_sym_SLASH] = ACTIONS(139),
    [anon_sym_CARET] = ACTIONS(137),
    [sym__glued] = ACTIONS(139),
    [sym_date] = ACTIONS(139),
    [sym_dms] = ACTIONS(137),
    [sym_number] = ACTIONS(139),
    [sym_digit_name] = ACTIONS(139),
    [sym_string] = ACTIONS(137),
    [sym_comment] = ACTIONS(3),
  },
  [16] = {
    [ts_builtin_sym_end] = ACTIONS(141),
    [sym_name] = ACTIONS(143),
    [aux_sym__end_token1] = ACTIONS(141),
    [anon_sym_SEMI] = ACTIONS(141),
    [anon_sym_LBRACE] = ACTIONS(141),
    [anon_sym_RBRACE] = ACTIONS(141),
    [anon_sym_use] = ACTIONS(143),
    [anon_sym_band] = ACTIONS(143),
    [anon_sym_let] = ACTIONS(143),
    [anon_sym_cable] = ACTIONS(143),
    [anon_sym_connector] = ACTIONS(143),
    [anon_sym_device] = ACTIONS(143),
    [anon_sym_instrument] = ACTIONS(143),
    [anon_sym_session] = ACTIONS(143),
    [anon_sym_station] = ACTIONS(143),
    [anon_sym_chain] = ACTIONS(143),
    [anon_sym_licence] = ACTIONS(143),
    [anon_sym_rules] = ACTIONS(143),
    [anon_sym_link] = ACTIONS(143),
    [anon_sym_variant] = ACTIONS(143),
    [anon_sym_accept] = ACTIONS(143),
    [anon_sym_transmit] = ACTIONS(143),
    [anon_sym_receive] = ACTIONS(143),
    [anon_sym_impedance] = ACTIONS(143),
    [anon_sym_velocity] = ACTIONS(143),
    [anon_sym_loss] = ACTIONS(143),
    [anon_sym_construction] = ACTIONS(143),
    [anon_sym_wires] = ACTIONS(143),
    [anon_sym_valid] = ACTIONS(143),
    [anon_sym_accuracy] = ACTIONS(143),
    [anon_sym_rating] = ACTIONS(143),
    [anon_sym_voltage] = ACTIONS(143),
    [anon_sym_size] = ACTIONS(143),
    [anon_sym_conductor] = ACTIONS(143),
    [anon_sym_source] = ACTIONS(143),
    [anon_sym_recalled] = ACTIONS(143),
    [anon_sym_joins] = ACTIONS(143),
    [anon_sym_limit] = ACTIONS(143),
    [anon_sym_family] = ACTIONS(143),
    [anon_sym_bump] = ACTIONS(143),
    [anon_sym_return_DASHloss] = ACTIONS(143),
    [anon_sym_swr] = ACTIONS(143),
    [anon_sym_kind] = ACTIONS(143),
    [anon_sym_high] = ACTIONS(143),
    [anon_sym_low] = ACTIONS(143),
    [anon_sym_port] = ACTIONS(143),
    [anon_sym_from] = ACTIONS(143),
    [anon_sym_isolation] = ACTIONS(143),
    [anon_sym_ratio] = ACTIONS(143),
    [anon_sym_split] = ACTIONS(143),
    [anon_sym_tee] = ACTIONS(143),
    [anon_sym_reversed] = ACTIONS(143),
    [anon_sym_passes] = ACTIONS(143),
    [anon_sym_gain] = ACTIONS(143),
    [anon_sym_noise] = ACTIONS(143),
    [anon_sym_excess] = ACTIONS(143),
    [anon_sym_ways] = ACTIONS(143),
    [anon_sym_coupled] = ACTIONS(143),
    [anon_sym_calibrated] = ACTIONS(143),
    [anon_sym_scale] = ACTIONS(143),
    [anon_sym_resolution] = ACTIONS(143),
    [anon_sym_due] = ACTIONS(143),
    [anon_sym_linearity] = ACTIONS(143),
    [anon_sym_repeatability] = ACTIONS(143),
    [anon_sym_directivity] = ACTIONS(143),
    [anon_sym_certificate] = ACTIONS(143),
    [anon_sym_load] = ACTIONS(143),
    [anon_sym_read] = ACTIONS(143),
    [anon_sym_temperature] = ACTIONS(143),
    [anon_sym_generator] = ACTIONS(143),
    [anon_sym_drift] = ACTIONS(143),
    [anon_sym_piece] = ACTIONS(143),
    [anon_sym_readings] = ACTIONS(143),
    [anon_sym_resonance] = ACTIONS(143),
    [anon_sym_delay] = ACTIONS(143),
    [anon_sym_phase] = ACTIONS(143),
    [anon_sym_adapter] = ACTIONS(143),
    [anon_sym_position] = ACTIONS(143),
    [anon_sym_ground] = ACTIONS(143),
    [anon_sym_place] = ACTIONS(143),
    [anon_sym_under] = ACTIONS(143),
    [anon_sym_beside] = ACTIONS(143),
    [anon_sym_spot] = ACTIONS(143),
    [anon_sym_alone] = ACTIONS(143),
    [anon_sym_site_DASHnoise] = ACTIONS(143),
    [anon_sym_transmitter] = ACTIONS(143),
    [anon_sym_receiver] = ACTIONS(143),
    [anon_sym_transceiver] = ACTIONS(143),
    [anon_sym_run] = ACTIONS(143),
    [anon_sym_jumper] = ACTIONS(143),
    [anon_sym_tail] = ACTIONS(143),
    [anon_sym_pad] = ACTIONS(143),
    [anon_sym_filter] = ACTIONS(143),
    [anon_sym_isolator] = ACTIONS(143),
    [anon_sym_circulator] = ACTIONS(143),
    [anon_sym_protector] = ACTIONS(143),
    [anon_sym_switch] = ACTIONS(143),
    [anon_sym_coupler] = ACTIONS(143),
    [anon_sym_meter] = ACTIONS(143),
    [anon_sym_balun] = ACTIONS(143),
    [anon_sym_tuner] = ACTIONS(143),
    [anon_sym_duplexer] = ACTIONS(143),
    [anon_sym_diplexer] = ACTIONS(143),
    [anon_sym_combiner] = ACTIONS(143),
    [anon_sym_divider] = ACTIONS(143),
    [anon_sym_amplifier] = ACTIONS(143),
    [anon_sym_preamplifier] = ACTIONS(143),
    [anon_sym_antenna] = ACTIONS(143),
    [anon_sym_branches] = ACTIONS(143),
    [anon_sym_expect] = ACTIONS(143),
    [anon_sym_authority] = ACTIONS(143),
    [anon_sym_jurisdiction] = ACTIONS(143),
    [anon_sym_service] = ACTIONS(143),
    [anon_sym_edition] = ACTIONS(143),
    [anon_sym_dated] = ACTIONS(143),
    [anon_sym_until] = ACTIONS(143),
    [anon_sym_holder] = ACTIONS(143),
    [anon_sym_class] = ACTIONS(143),
    [anon_sym_ask] = ACTIONS(143),
    [anon_sym_threshold] = ACTIONS(143),
    [anon_sym_fixed] = ACTIONS(143),
    [anon_sym_condition] = ACTIONS(143),
    [anon_sym_reflection] = ACTIONS(143),
    [anon_sym_field] = ACTIONS(143),
    [anon_sym_hop] = ACTIONS(143),
    [anon_sym_profile] = ACTIONS(143),
    [anon_sym_distance] = ACTIONS(143),
    [anon_sym_k_DASHfactor] = ACTIONS(143),
    [anon_sym_need] = ACTIONS(143),
    [anon_sym_model] = ACTIONS(143),
    [anon_sym_coverage] = ACTIONS(143),
    [anon_sym_take] = ACTIONS(143),
    [anon_sym_put] = ACTIONS(143),
    [anon_sym_branch] = ACTIONS(143),
    [anon_sym_inner] = ACTIONS(143),
    [anon_sym_outer] = ACTIONS(143),
    [anon_sym_permittivity] = ACTIONS(143),
    [anon_sym_loss_DASHtangent] = ACTIONS(143),
    [anon_sym_strand] = ACTIONS(143),
    [anon_sym_strand_DASHdiameter] = ACTIONS(143),
    [anon_sym_braid] = ACTIONS(143),
    [anon_sym_resistivity] = ACTIONS(143),
    [anon_sym_inner_DASHresistivity] = ACTIONS(143),
    [anon_sym_outer_DASHresistivity] = ACTIONS(143),
    [anon_sym_diameter] = ACTIONS(143),
    [anon_sym_spacing] = ACTIONS(143),
    [anon_sym_baseline] = ACTIONS(143),
    [anon_sym_through] = ACTIONS(143),
    [anon_sym_open] = ACTIONS(143),
    [anon_sym_short] = ACTIONS(143),
    [anon_sym_equalise] = ACTIONS(143),
    [anon_sym_power] = ACTIONS(143),
    [anon_sym_mode] = ACTIONS(143),
    [anon_sym_duty] = ACTIONS(143),
    [anon_sym_keyed] = ACTIONS(143),
    [anon_sym_foldback] = ACTIONS(143),
    [anon_sym_bandwidth] = ACTIONS(143),
    [anon_sym_sensitivity] = ACTIONS(143),
    [anon_sym_blocking] = ACTIONS(143),
    [anon_sym_efficiency] = ACTIONS(143),
    [anon_sym_height] = ACTIONS(143),
    [anon_sym_pattern] = ACTIONS(143),
    [anon_sym_haat] = ACTIONS(143),
    [anon_sym_radius] = ACTIONS(143),
    [anon_sym_fails] = ACTIONS(143),
    [anon_sym_GHz] = ACTIONS(143),
    [anon_sym_Hz] = ACTIONS(143),
    [anon_sym_MHz] = ACTIONS(143),
    [anon_sym_above] = ACTIONS(143),
    [anon_sym_added] = ACTIONS(143),
    [anon_sym_after] = ACTIONS(143),
    [anon_sym_against] = ACTIONS(143),
    [anon_sym_agl] = ACTIONS(143),
    [anon_sym_allocated] = ACTIONS(143),
    [anon_sym_am] = ACTIONS(143),
    [anon_sym_ambient] = ACTIONS(143),
    [anon_sym_amsl] = ACTIONS(143),
    [anon_sym_apart] = ACTIONS(143),
    [anon_sym_at] = ACTIONS(143),
    [anon_sym_averaging] = ACTIONS(143),
    [anon_sym_below] = ACTIONS(143),
    [anon_sym_beyond] = ACTIONS(143),
    [anon_sym_blank] = ACTIONS(143),
    [anon_sym_bow] = ACTIONS(143),
    [anon_sym_bullington] = ACTIONS(143),
    [anon_sym_by] = ACTIONS(143),
    [anon_sym_carrier] = ACTIONS(143),
    [anon_sym_cascade] = ACTIONS(143),
    [anon_sym_city] = ACTIONS(143),
    [anon_sym_clad] = ACTIONS(143),
    [anon_sym_confidence] = ACTIONS(143),
    [anon_sym_corrected] = ACTIONS(143),
    [anon_sym_cw] = ACTIONS(143),
    [anon_sym_dB] = ACTIONS(143),
    [anon_sym_dBW] = ACTIONS(143),
    [anon_sym_dBd] = ACTIONS(143),
    [anon_sym_dBi] = ACTIONS(143),
    [anon_sym_dBm] = ACTIONS(143),
    [anon_sym_data] = ACTIONS(143),
    [anon_sym_date] = ACTIONS(143),
    [anon_sym_datum] = ACTIONS(143),
    [anon_sym_dc_DASHinput] = ACTIONS(143),
    [anon_sym_degrees] = ACTIONS(143),
    [anon_sym_delivered] = ACTIONS(143),
    [anon_sym_desense] = ACTIONS(143),
    [anon_sym_displayed] = ACTIONS(143),
    [anon_sym_dms] = ACTIONS(143),
    [anon_sym_down] = ACTIONS(143),
    [anon_sym_eirp] = ACTIONS(143),
    [anon_sym_elevation] = ACTIONS(143),
    [anon_sym_ends] = ACTIONS(143),
    [anon_sym_erp] = ACTIONS(143),
    [anon_sym_etrs89] = ACTIONS(143),
    [anon_sym_figure] = ACTIONS(143),
    [anon_sym_fm] = ACTIONS(143),
    [anon_sym_for] = ACTIONS(143),
    [anon_sym_forward] = ACTIONS(143),
    [anon_sym_free_DASHspace] = ACTIONS(143),
    [anon_sym_frequency] = ACTIONS(143),
    [anon_sym_ft] = ACTIONS(143),
    [anon_sym_full] = ACTIONS(143),
    [anon_sym_guess] = ACTIONS(143),
    [anon_sym_hata_DASHopen] = ACTIONS(143),
    [anon_sym_hata_DASHsuburban] = ACTIONS(143),
    [anon_sym_hata_DASHurban] = ACTIONS(143),
    [anon_sym_height_DASHamsl] = ACTIONS(143),
    [anon_sym_horizontal] = ACTIONS(143),
    [anon_sym_if] = ACTIONS(143),
    [anon_sym_in] = ACTIONS(143),
    [anon_sym_input] = ACTIONS(143),
    [anon_sym_instead] = ACTIONS(143),
    [anon_sym_k] = ACTIONS(143),
    [anon_sym_kHz] = ACTIONS(143),
    [anon_sym_kW] = ACTIONS(143),
    [anon_sym_km] = ACTIONS(143),
    [anon_sym_latitude] = ACTIONS(143),
    [anon_sym_longitude] = ACTIONS(143),
    [anon_sym_m] = ACTIONS(143),
    [anon_sym_mW] = ACTIONS(143),
    [anon_sym_maximum] = ACTIONS(143),
    [anon_sym_mean] = ACTIONS(143),
    [anon_sym_medium] = ACTIONS(143),
    [anon_sym_nad27] = ACTIONS(143),
    [anon_sym_nad83] = ACTIONS(143),
    [anon_sym_net] = ACTIONS(143),
    [anon_sym_no] = ACTIONS(143),
    [anon_sym_nominal] = ACTIONS(143),
    [anon_sym_occupational] = ACTIONS(143),
    [anon_sym_of] = ACTIONS(143),
    [anon_sym_offset] = ACTIONS(143),
    [anon_sym_on] = ACTIONS(143),
    [anon_sym_one_DASHedge] = ACTIONS(143),
    [anon_sym_out] = ACTIONS(143),
    [anon_sym_output] = ACTIONS(143),
    [anon_sym_over] = ACTIONS(143),
    [anon_sym_pep] = ACTIONS(143),
    [anon_sym_per] = ACTIONS(145),
    [anon_sym_places] = ACTIONS(143),
    [anon_sym_public] = ACTIONS(143),
    [anon_sym_quiet_DASHrural] = ACTIONS(143),
    [anon_sym_quieting] = ACTIONS(143),
    [anon_sym_rated] = ACTIONS(143),
    [anon_sym_reactance] = ACTIONS(143),
    [anon_sym_reading] = ACTIONS(143),
    [anon_sym_realized] = ACTIONS(143),
    [anon_sym_receive_DASHfrequency] = ACTIONS(143),
    [anon_sym_receive_DASHloss] = ACTIONS(143),
    [anon_sym_reference] = ACTIONS(143),
    [anon_sym_reflected] = ACTIONS(143),
    [anon_sym_rejects] = ACTIONS(143),
    [anon_sym_residential] = ACTIONS(143),
    [anon_sym_rural] = ACTIONS(143),
    [anon_sym_series] = ACTIONS(143),
    [anon_sym_shared] = ACTIONS(143),
    [anon_sym_sheet] = ACTIONS(143),
    [anon_sym_shunt] = ACTIONS(143),
    [anon_sym_sinad] = ACTIONS(143),
    [anon_sym_since] = ACTIONS(143),
    [anon_sym_snr] = ACTIONS(143),
    [anon_sym_spread] = ACTIONS(143),
    [anon_sym_ssb] = ACTIONS(143),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(143),
    [anon_sym_then] = ACTIONS(143),
    [anon_sym_title] = ACTIONS(143),
    [anon_sym_to] = ACTIONS(143),
    [anon_sym_total] = ACTIONS(143),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(143),
    [anon_sym_two_DASHray] = ACTIONS(143),
    [anon_sym_typical] = ACTIONS(143),
    [anon_sym_up] = ACTIONS(143),
    [anon_sym_vertical] = ACTIONS(143),
    [anon_sym_way] = ACTIONS(143),
    [anon_sym_wet] = ACTIONS(143),
    [anon_sym_wgs84] = ACTIONS(143),
    [anon_sym_with] = ACTIONS(143),
    [anon_sym_within] = ACTIONS(143),
    [anon_sym_yes] = ACTIONS(143),
    [anon_sym_COMMA] = ACTIONS(141),
    [anon_sym_EQ] = ACTIONS(141),
    [anon_sym_u00b1] = ACTIONS(141),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(141),
    [anon_sym_LPAREN] = ACTIONS(141),
    [anon_sym_DASH] = ACTIONS(143),
    [anon_sym_u2212] = ACTIONS(143),
    [anon_sym_u2013] = ACTIONS(143),
    [anon_sym_PLUS] = ACTIONS(143),
    [anon_sym_STAR] = ACTIONS(141),
    [anon_sym_SLASH] = ACTIONS(143),
    [anon_sym_CARET] = ACTIONS(141),
    [sym__glued] = ACTIONS(143),
    [sym_date] = ACTIONS(143),
    [sym_dms] = ACTIONS(141),
    [sym_number] = ACTIONS(143),
    [sym_digit_name] = ACTIONS(143),
    [sym_string] = ACTIONS(141),
    [sym_comment] = ACTIONS(3),
  },
  [17] = {
    [ts_builtin_sym_end] = ACTIONS(147),
    [sym_name] = ACTIONS(149),
    [aux_sym__end_token1] = ACTIONS(147),
    [anon_sym_SEMI] = ACTIONS(147),
    [anon_sym_LBRACE] = ACTIONS(147),
    [anon_sym_RBRACE] = ACTIONS(147),
    [anon_sym_use] = ACTIONS(149),
    [anon_sym_band] = ACTIONS(149),
    [anon_sym_let] = ACTIONS(149),
    [anon_sym_cable] = ACTIONS(149),
    [anon_sym_connector] = ACTIONS(149),
    [anon_sym_device] = ACTIONS(149),
    [anon_sym_instrument] = ACTIONS(149),
    [anon_sym_session] = ACTIONS(149),
    [anon_sym_station] = ACTIONS(149),
    [anon_sym_chain] = ACTIONS(149),
    [anon_sym_licence] = ACTIONS(149),
    [anon_sym_rules] = ACTIONS(149),
    [anon_sym_link] = ACTIONS(149),
    [anon_sym_variant] = ACTIONS(149),
    [anon_sym_accept] = ACTIONS(149),
    [anon_sym_transmit] = ACTIONS(149),
    [anon_sym_receive] = ACTIONS(149),
    [anon_sym_impedance] = ACTIONS(149),
    [anon_sym_velocity] = ACTIONS(149),
    [anon_sym_loss] = ACTIONS(149),
    [anon_sym_construction] = ACTIONS(149),
    [anon_sym_wires] = ACTIONS(149),
    [anon_sym_valid] = ACTIONS(149),
    [anon_sym_accuracy] = ACTIONS(149),
    [anon_sym_rating] = ACTIONS(149),
    [anon_sym_voltage] = ACTIONS(149),
    [anon_sym_size] = ACTIONS(149),
    [anon_sym_conductor] = ACTIONS(149),
    [anon_sym_source] = ACTIONS(149),
    [anon_sym_recalled] = ACTIONS(149),
    [anon_sym_joins] = ACTIONS(149),
    [anon_sym_limit] = ACTIONS(149),
    [anon_sym_family] = ACTIONS(149),
    [anon_sym_bump] = ACTIONS(149),
    [anon_sym_return_DASHloss] = ACTIONS(149),
    [anon_sym_swr] = ACTIONS(149),
    [anon_sym_kind] = ACTIONS(149),
    [anon_sym_high] = ACTIONS(149),
    [anon_sym_low] = ACTIONS(149),
    [anon_sym_port] = ACTIONS(149),
    [anon_sym_from] = ACTIONS(149),
    [anon_sym_isolation] = ACTIONS(149),
    [anon_sym_ratio] = ACTIONS(149),
    [anon_sym_split] = ACTIONS(149),
    [anon_sym_tee] = ACTIONS(149),
    [anon_sym_reversed] = ACTIONS(149),
    [anon_sym_passes] = ACTIONS(149),
    [anon_sym_gain] = ACTIONS(149),
    [anon_sym_noise] = ACTIONS(149),
    [anon_sym_excess] = ACTIONS(149),
    [anon_sym_ways] = ACTIONS(149),
    [anon_sym_coupled] = ACTIONS(149),
    [anon_sym_calibrated] = ACTIONS(149),
    [anon_sym_scale] = ACTIONS(149),
    [anon_sym_resolution] = ACTIONS(149),
    [anon_sym_due] = ACTIONS(149),
    [anon_sym_linearity] = ACTIONS(149),
    [anon_sym_repeatability] = ACTIONS(149),
    [anon_sym_directivity] = ACTIONS(149),
    [anon_sym_certificate] = ACTIONS(149),
    [anon_sym_load] = ACTIONS(149),
    [anon_sym_read] = ACTIONS(149),
    [anon_sym_temperature] = ACTIONS(149),
    [anon_sym_generator] = ACTIONS(149),
    [anon_sym_drift] = ACTIONS(149),
    [anon_sym_piece] = ACTIONS(149),
    [anon_sym_readings] = ACTIONS(149),
    [anon_sym_resonance] = ACTIONS(149),
    [anon_sym_delay] = ACTIONS(149),
    [anon_sym_phase] = ACTIONS(149),
    [anon_sym_adapter] = ACTIONS(149),
    [anon_sym_position] = ACTIONS(149),
    [anon_sym_ground] = ACTIONS(149),
    [anon_sym_place] = ACTIONS(149),
    [anon_sym_under] = ACTIONS(149),
    [anon_sym_beside] = ACTIONS(149),
    [anon_sym_spot] = ACTIONS(149),
    [anon_sym_alone] = ACTIONS(149),
    [anon_sym_site_DASHnoise] = ACTIONS(149),
    [anon_sym_transmitter] = ACTIONS(149),
    [anon_sym_receiver] = ACTIONS(149),
    [anon_sym_transceiver] = ACTIONS(149),
    [anon_sym_run] = ACTIONS(149),
    [anon_sym_jumper] = ACTIONS(149),
    [anon_sym_tail] = ACTIONS(149),
    [anon_sym_pad] = ACTIONS(149),
    [anon_sym_filter] = ACTIONS(149),
    [anon_sym_isolator] = ACTIONS(149),
    [anon_sym_circulator] = ACTIONS(149),
    [anon_sym_protector] = ACTIONS(149),
    [anon_sym_switch] = ACTIONS(149),
    [anon_sym_coupler] = ACTIONS(149),
    [anon_sym_meter] = ACTIONS(149),
    [anon_sym_balun] = ACTIONS(149),
    [anon_sym_tuner] = ACTIONS(149),
    [anon_sym_duplexer] = ACTIONS(149),
    [anon_sym_diplexer] = ACTIONS(149),
    [anon_sym_combiner] = ACTIONS(149),
    [anon_sym_divider] = ACTIONS(149),
    [anon_sym_amplifier] = ACTIONS(149),
    [anon_sym_preamplifier] = ACTIONS(149),
    [anon_sym_antenna] = ACTIONS(149),
    [anon_sym_branches] = ACTIONS(149),
    [anon_sym_expect] = ACTIONS(149),
    [anon_sym_authority] = ACTIONS(149),
    [anon_sym_jurisdiction] = ACTIONS(149),
    [anon_sym_service] = ACTIONS(149),
    [anon_sym_edition] = ACTIONS(149),
    [anon_sym_dated] = ACTIONS(149),
    [anon_sym_until] = ACTIONS(149),
    [anon_sym_holder] = ACTIONS(149),
    [anon_sym_class] = ACTIONS(149),
    [anon_sym_ask] = ACTIONS(149),
    [anon_sym_threshold] = ACTIONS(149),
    [anon_sym_fixed] = ACTIONS(149),
    [anon_sym_condition] = ACTIONS(149),
    [anon_sym_reflection] = ACTIONS(149),
    [anon_sym_field] = ACTIONS(149),
    [anon_sym_hop] = ACTIONS(149),
    [anon_sym_profile] = ACTIONS(149),
    [anon_sym_distance] = ACTIONS(149),
    [anon_sym_k_DASHfactor] = ACTIONS(149),
    [anon_sym_need] = ACTIONS(149),
    [anon_sym_model] = ACTIONS(149),
    [anon_sym_coverage] = ACTIONS(149),
    [anon_sym_take] = ACTIONS(149),
    [anon_sym_put] = ACTIONS(149),
    [anon_sym_branch] = ACTIONS(149),
    [anon_sym_inner] = ACTIONS(149),
    [anon_sym_outer] = ACTIONS(149),
    [anon_sym_permittivity] = ACTIONS(149),
    [anon_sym_loss_DASHtangent] = ACTIONS(149),
    [anon_sym_strand] = ACTIONS(149),
    [anon_sym_strand_DASHdiameter] = ACTIONS(149),
    [anon_sym_braid] = ACTIONS(149),
    [anon_sym_resistivity] = ACTIONS(149),
    [anon_sym_inner_DASHresistivity] = ACTIONS(149),
    [anon_sym_outer_DASHresistivity] = ACTIONS(149),
    [anon_sym_diameter] = ACTIONS(149),
    [anon_sym_spacing] = ACTIONS(149),
    [anon_sym_baseline] = ACTIONS(149),
    [anon_sym_through] = ACTIONS(149),
    [anon_sym_open] = ACTIONS(149),
    [anon_sym_short] = ACTIONS(149),
    [anon_sym_equalise] = ACTIONS(149),
    [anon_sym_power] = ACTIONS(149),
    [anon_sym_mode] = ACTIONS(149),
    [anon_sym_duty] = ACTIONS(149),
    [anon_sym_keyed] = ACTIONS(149),
    [anon_sym_foldback] = ACTIONS(149),
    [anon_sym_bandwidth] = ACTIONS(149),
    [anon_sym_sensitivity] = ACTIONS(149),
    [anon_sym_blocking] = ACTIONS(149),
    [anon_sym_efficiency] = ACTIONS(149),
    [anon_sym_height] = ACTIONS(149),
    [anon_sym_pattern] = ACTIONS(149),
    [anon_sym_haat] = ACTIONS(149),
    [anon_sym_radius] = ACTIONS(149),
    [anon_sym_fails] = ACTIONS(149),
    [anon_sym_GHz] = ACTIONS(149),
    [anon_sym_Hz] = ACTIONS(149),
    [anon_sym_MHz] = ACTIONS(149),
    [anon_sym_above] = ACTIONS(149),
    [anon_sym_added] = ACTIONS(149),
    [anon_sym_after] = ACTIONS(149),
    [anon_sym_against] = ACTIONS(149),
    [anon_sym_agl] = ACTIONS(149),
    [anon_sym_allocated] = ACTIONS(149),
    [anon_sym_am] = ACTIONS(149),
    [anon_sym_ambient] = ACTIONS(149),
    [anon_sym_amsl] = ACTIONS(149),
    [anon_sym_apart] = ACTIONS(149),
    [anon_sym_at] = ACTIONS(149),
    [anon_sym_averaging] = ACTIONS(149),
    [anon_sym_below] = ACTIONS(149),
    [anon_sym_beyond] = ACTIONS(149),
    [anon_sym_blank] = ACTIONS(149),
    [anon_sym_bow] = ACTIONS(149),
    [anon_sym_bullington] = ACTIONS(149),
    [anon_sym_by] = ACTIONS(149),
    [anon_sym_carrier] = ACTIONS(149),
    [anon_sym_cascade] = ACTIONS(149),
    [anon_sym_city] = ACTIONS(149),
    [anon_sym_clad] = ACTIONS(149),
    [anon_sym_confidence] = ACTIONS(149),
    [anon_sym_corrected] = ACTIONS(149),
    [anon_sym_cw] = ACTIONS(149),
    [anon_sym_dB] = ACTIONS(149),
    [anon_sym_dBW] = ACTIONS(149),
    [anon_sym_dBd] = ACTIONS(149),
    [anon_sym_dBi] = ACTIONS(149),
    [anon_sym_dBm] = ACTIONS(149),
    [anon_sym_data] = ACTIONS(149),
    [anon_sym_date] = ACTIONS(149),
    [anon_sym_datum] = ACTIONS(149),
    [anon_sym_dc_DASHinput] = ACTIONS(149),
    [anon_sym_degrees] = ACTIONS(149),
    [anon_sym_delivered] = ACTIONS(149),
    [anon_sym_desense] = ACTIONS(149),
    [anon_sym_displayed] = ACTIONS(149),
    [anon_sym_dms] = ACTIONS(149),
    [anon_sym_down] = ACTIONS(149),
    [anon_sym_eirp] = ACTIONS(149),
    [anon_sym_elevation] = ACTIONS(149),
    [anon_sym_ends] = ACTIONS(149),
    [anon_sym_erp] = ACTIONS(149),
    [anon_sym_etrs89] = ACTIONS(149),
    [anon_sym_figure] = ACTIONS(149),
    [anon_sym_fm] = ACTIONS(149),
    [anon_sym_for] = ACTIONS(149),
    [anon_sym_forward] = ACTIONS(149),
    [anon_sym_free_DASHspace] = ACTIONS(149),
    [anon_sym_frequency] = ACTIONS(149),
    [anon_sym_ft] = ACTIONS(149),
    [anon_sym_full] = ACTIONS(149),
    [anon_sym_guess] = ACTIONS(149),
    [anon_sym_hata_DASHopen] = ACTIONS(149),
    [anon_sym_hata_DASHsuburban] = ACTIONS(149),
    [anon_sym_hata_DASHurban] = ACTIONS(149),
    [anon_sym_height_DASHamsl] = ACTIONS(149),
    [anon_sym_horizontal] = ACTIONS(149),
    [anon_sym_if] = ACTIONS(149),
    [anon_sym_in] = ACTIONS(149),
    [anon_sym_input] = ACTIONS(149),
    [anon_sym_instead] = ACTIONS(149),
    [anon_sym_k] = ACTIONS(149),
    [anon_sym_kHz] = ACTIONS(149),
    [anon_sym_kW] = ACTIONS(149),
    [anon_sym_km] = ACTIONS(149),
    [anon_sym_latitude] = ACTIONS(149),
    [anon_sym_longitude] = ACTIONS(149),
    [anon_sym_m] = ACTIONS(149),
    [anon_sym_mW] = ACTIONS(149),
    [anon_sym_maximum] = ACTIONS(149),
    [anon_sym_mean] = ACTIONS(149),
    [anon_sym_medium] = ACTIONS(149),
    [anon_sym_nad27] = ACTIONS(149),
    [anon_sym_nad83] = ACTIONS(149),
    [anon_sym_net] = ACTIONS(149),
    [anon_sym_no] = ACTIONS(149),
    [anon_sym_nominal] = ACTIONS(149),
    [anon_sym_occupational] = ACTIONS(149),
    [anon_sym_of] = ACTIONS(149),
    [anon_sym_offset] = ACTIONS(149),
    [anon_sym_on] = ACTIONS(149),
    [anon_sym_one_DASHedge] = ACTIONS(149),
    [anon_sym_out] = ACTIONS(149),
    [anon_sym_output] = ACTIONS(149),
    [anon_sym_over] = ACTIONS(149),
    [anon_sym_pep] = ACTIONS(149),
    [anon_sym_per] = ACTIONS(149),
    [anon_sym_places] = ACTIONS(149),
    [anon_sym_public] = ACTIONS(149),
    [anon_sym_quiet_DASHrural] = ACTIONS(149),
    [anon_sym_quieting] = ACTIONS(149),
    [anon_sym_rated] = ACTIONS(149),
    [anon_sym_reactance] = ACTIONS(149),
    [anon_sym_reading] = ACTIONS(149),
    [anon_sym_realized] = ACTIONS(149),
    [anon_sym_receive_DASHfrequency] = ACTIONS(149),
    [anon_sym_receive_DASHloss] = ACTIONS(149),
    [anon_sym_reference] = ACTIONS(149),
    [anon_sym_reflected] = ACTIONS(149),
    [anon_sym_rejects] = ACTIONS(149),
    [anon_sym_residential] = ACTIONS(149),
    [anon_sym_rural] = ACTIONS(149),
    [anon_sym_series] = ACTIONS(149),
    [anon_sym_shared] = ACTIONS(149),
    [anon_sym_sheet] = ACTIONS(149),
    [anon_sym_shunt] = ACTIONS(149),
    [anon_sym_sinad] = ACTIONS(149),
    [anon_sym_since] = ACTIONS(149),
    [anon_sym_snr] = ACTIONS(149),
    [anon_sym_spread] = ACTIONS(149),
    [anon_sym_ssb] = ACTIONS(149),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(149),
    [anon_sym_then] = ACTIONS(149),
    [anon_sym_title] = ACTIONS(149),
    [anon_sym_to] = ACTIONS(149),
    [anon_sym_total] = ACTIONS(149),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(149),
    [anon_sym_two_DASHray] = ACTIONS(149),
    [anon_sym_typical] = ACTIONS(149),
    [anon_sym_up] = ACTIONS(149),
    [anon_sym_vertical] = ACTIONS(149),
    [anon_sym_way] = ACTIONS(149),
    [anon_sym_wet] = ACTIONS(149),
    [anon_sym_wgs84] = ACTIONS(149),
    [anon_sym_with] = ACTIONS(149),
    [anon_sym_within] = ACTIONS(149),
    [anon_sym_yes] = ACTIONS(149),
    [anon_sym_COMMA] = ACTIONS(147),
    [anon_sym_EQ] = ACTIONS(147),
    [anon_sym_u00b1] = ACTIONS(147),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(147),
    [anon_sym_LPAREN] = ACTIONS(147),
    [anon_sym_DASH] = ACTIONS(149),
    [anon_sym_u2212] = ACTIONS(149),
    [anon_sym_u2013] = ACTIONS(149),
    [anon_sym_PLUS] = ACTIONS(149),
    [anon_sym_STAR] = ACTIONS(147),
    [anon_sym_SLASH] = ACTIONS(149),
    [anon_sym_CARET] = ACTIONS(147),
    [sym__glued] = ACTIONS(149),
    [sym_date] = ACTIONS(149),
    [sym_dms] = ACTIONS(147),
    [sym_number] = ACTIONS(149),
    [sym_digit_name] = ACTIONS(149),
    [sym_string] = ACTIONS(147),
    [sym_comment] = ACTIONS(3),
  },
  [18] = {
    [ts_builtin_sym_end] = ACTIONS(151),
    [sym_name] = ACTIONS(153),
    [aux_sym__end_token1] = ACTIONS(151),
    [anon_sym_SEMI] = ACTIONS(151),
    [anon_sym_LBRACE] = ACTIONS(151),
    [anon_sym_RBRACE] = ACTIONS(151),
    [anon_sym_use] = ACTIONS(153),
    [anon_sym_band] = ACTIONS(153),
    [anon_sym_let] = ACTIONS(153),
    [anon_sym_cable] = ACTIONS(153),
    [anon_sym_connector] = ACTIONS(153),
    [anon_sym_device] = ACTIONS(153),
    [anon_sym_instrument] = ACTIONS(153),
    [anon_sym_session] = ACTIONS(153),
    [anon_sym_station] = ACTIONS(153),
    [anon_sym_chain] = ACTIONS(153),
    [anon_sym_licence] = ACTIONS(153),
    [anon_sym_rules] = ACTIONS(153),
    [anon_sym_link] = ACTIONS(153),
    [anon_sym_variant] = ACTIONS(153),
    [anon_sym_accept] = ACTIONS(153),
    [anon_sym_transmit] = ACTIONS(153),
    [anon_sym_receive] = ACTIONS(153),
    [anon_sym_impedance] = ACTIONS(153),
    [anon_sym_velocity] = ACTIONS(153),
    [anon_sym_loss] = ACTIONS(153),
    [anon_sym_construction] = ACTIONS(153),
    [anon_sym_wires] = ACTIONS(153),
    [anon_sym_valid] = ACTIONS(153),
    [anon_sym_accuracy] = ACTIONS(153),
    [anon_sym_rating] = ACTIONS(153),
    [anon_sym_voltage] = ACTIONS(153),
    [anon_sym_size] = ACTIONS(153),
    [anon_sym_conductor] = ACTIONS(153),
    [anon_sym_source] = ACTIONS(153),
    [anon_sym_recalled] = ACTIONS(153),
    [anon_sym_joins] = ACTIONS(153),
    [anon_sym_limit] = ACTIONS(153),
    [anon_sym_family] = ACTIONS(153),
    [anon_sym_bump] = ACTIONS(153),
    [anon_sym_return_DASHloss] = ACTIONS(153),
    [anon_sym_swr] = ACTIONS(153),
    [anon_sym_kind] = ACTIONS(153),
    [anon_sym_high] = ACTIONS(153),
    [anon_sym_low] = ACTIONS(153),
    [anon_sym_port] = ACTIONS(153),
    [anon_sym_from] = ACTIONS(153),
    [anon_sym_isolation] = ACTIONS(153),
    [anon_sym_ratio] = ACTIONS(153),
    [anon_sym_split] = ACTIONS(153),
    [anon_sym_tee] = ACTIONS(153),
    [anon_sym_reversed] = ACTIONS(153),
    [anon_sym_passes] = ACTIONS(153),
    [anon_sym_gain] = ACTIONS(153),
    [anon_sym_noise] = ACTIONS(153),
    [anon_sym_excess] = ACTIONS(153),
    [anon_sym_ways] = ACTIONS(153),
    [anon_sym_coupled] = ACTIONS(153),
    [anon_sym_calibrated] = ACTIONS(153),
    [anon_sym_scale] = ACTIONS(153),
    [anon_sym_resolution] = ACTIONS(153),
    [anon_sym_due] = ACTIONS(153),
    [anon_sym_linearity] = ACTIONS(153),
    [anon_sym_repeatability] = ACTIONS(153),
    [anon_sym_directivity] = ACTIONS(153),
    [anon_sym_certificate] = ACTIONS(153),
    [anon_sym_load] = ACTIONS(153),
    [anon_sym_read] = ACTIONS(153),
    [anon_sym_temperature] = ACTIONS(153),
    [anon_sym_generator] = ACTIONS(153),
    [anon_sym_drift] = ACTIONS(153),
    [anon_sym_piece] = ACTIONS(153),
    [anon_sym_readings] = ACTIONS(153),
    [anon_sym_resonance] = ACTIONS(153),
    [anon_sym_delay] = ACTIONS(153),
    [anon_sym_phase] = ACTIONS(153),
    [anon_sym_adapter] = ACTIONS(153),
    [anon_sym_position] = ACTIONS(153),
    [anon_sym_ground] = ACTIONS(153),
    [anon_sym_place] = ACTIONS(153),
    [anon_sym_under] = ACTIONS(153),
    [anon_sym_beside] = ACTIONS(153),
    [anon_sym_spot] = ACTIONS(153),
    [anon_sym_alone] = ACTIONS(153),
    [anon_sym_site_DASHnoise] = ACTIONS(153),
    [anon_sym_transmitter] = ACTIONS(153),
    [anon_sym_receiver] = ACTIONS(153),
    [anon_sym_transceiver] = ACTIONS(153),
    [anon_sym_run] = ACTIONS(153),
    [anon_sym_jumper] = ACTIONS(153),
    [anon_sym_tail] = ACTIONS(153),
    [anon_sym_pad] = ACTIONS(153),
    [anon_sym_filter] = ACTIONS(153),
    [anon_sym_isolator] = ACTIONS(153),
    [anon_sym_circulator] = ACTIONS(153),
    [anon_sym_protector] = ACTIONS(153),
    [anon_sym_switch] = ACTIONS(153),
    [anon_sym_coupler] = ACTIONS(153),
    [anon_sym_meter] = ACTIONS(153),
    [anon_sym_balun] = ACTIONS(153),
    [anon_sym_tuner] = ACTIONS(153),
    [anon_sym_duplexer] = ACTIONS(153),
    [anon_sym_diplexer] = ACTIONS(153),
    [anon_sym_combiner] = ACTIONS(153),
    [anon_sym_divider] = ACTIONS(153),
    [anon_sym_amplifier] = ACTIONS(153),
    [anon_sym_preamplifier] = ACTIONS(153),
    [anon_sym_antenna] = ACTIONS(153),
    [anon_sym_branches] = ACTIONS(153),
    [anon_sym_expect] = ACTIONS(153),
    [anon_sym_authority] = ACTIONS(153),
    [anon_sym_jurisdiction] = ACTIONS(153),
    [anon_sym_service] = ACTIONS(153),
    [anon_sym_edition] = ACTIONS(153),
    [anon_sym_dated] = ACTIONS(153),
    [anon_sym_until] = ACTIONS(153),
    [anon_sym_holder] = ACTIONS(153),
    [anon_sym_class] = ACTIONS(153),
    [anon_sym_ask] = ACTIONS(153),
    [anon_sym_threshold] = ACTIONS(153),
    [anon_sym_fixed] = ACTIONS(153),
    [anon_sym_condition] = ACTIONS(153),
    [anon_sym_reflection] = ACTIONS(153),
    [anon_sym_field] = ACTIONS(153),
    [anon_sym_hop] = ACTIONS(153),
    [anon_sym_profile] = ACTIONS(153),
    [anon_sym_distance] = ACTIONS(153),
    [anon_sym_k_DASHfactor] = ACTIONS(153),
    [anon_sym_need] = ACTIONS(153),
    [anon_sym_model] = ACTIONS(153),
    [anon_sym_coverage] = ACTIONS(153),
    [anon_sym_take] = ACTIONS(153),
    [anon_sym_put] = ACTIONS(153),
    [anon_sym_branch] = ACTIONS(153),
    [anon_sym_inner] = ACTIONS(153),
    [anon_sym_outer] = ACTIONS(153),
    [anon_sym_permittivity] = ACTIONS(153),
    [anon_sym_loss_DASHtangent] = ACTIONS(153),
    [anon_sym_strand] = ACTIONS(153),
    [anon_sym_strand_DASHdiameter] = ACTIONS(153),
    [anon_sym_braid] = ACTIONS(153),
    [anon_sym_resistivity] = ACTIONS(153),
    [anon_sym_inner_DASHresistivity] = ACTIONS(153),
    [anon_sym_outer_DASHresistivity] = ACTIONS(153),
    [anon_sym_diameter] = ACTIONS(153),
    [anon_sym_spacing] = ACTIONS(153),
    [anon_sym_baseline] = ACTIONS(153),
    [anon_sym_through] = ACTIONS(153),
    [anon_sym_open] = ACTIONS(153),
    [anon_sym_short] = ACTIONS(153),
    [anon_sym_equalise] = ACTIONS(153),
    [anon_sym_power] = ACTIONS(153),
    [anon_sym_mode] = ACTIONS(153),
    [anon_sym_duty] = ACTIONS(153),
    [anon_sym_keyed] = ACTIONS(153),
    [anon_sym_foldback] = ACTIONS(153),
    [anon_sym_bandwidth] = ACTIONS(153),
    [anon_sym_sensitivity] = ACTIONS(153),
    [anon_sym_blocking] = ACTIONS(153),
    [anon_sym_efficiency] = ACTIONS(153),
    [anon_sym_height] = ACTIONS(153),
    [anon_sym_pattern] = ACTIONS(153),
    [anon_sym_haat] = ACTIONS(153),
    [anon_sym_radius] = ACTIONS(153),
    [anon_sym_fails] = ACTIONS(153),
    [anon_sym_GHz] = ACTIONS(153),
    [anon_sym_Hz] = ACTIONS(153),
    [anon_sym_MHz] = ACTIONS(153),
    [anon_sym_above] = ACTIONS(153),
    [anon_sym_added] = ACTIONS(153),
    [anon_sym_after] = ACTIONS(153),
    [anon_sym_against] = ACTIONS(153),
    [anon_sym_agl] = ACTIONS(153),
    [anon_sym_allocated] = ACTIONS(153),
    [anon_sym_am] = ACTIONS(153),
    [anon_sym_ambient] = ACTIONS(153),
    [anon_sym_amsl] = ACTIONS(153),
    [anon_sym_apart] = ACTIONS(153),
    [anon_sym_at] = ACTIONS(153),
    [anon_sym_averaging] = ACTIONS(153),
    [anon_sym_below] = ACTIONS(153),
    [anon_sym_beyond] = ACTIONS(153),
    [anon_sym_blank] = ACTIONS(153),
    [anon_sym_bow] = ACTIONS(153),
    [anon_sym_bullington] = ACTIONS(153),
    [anon_sym_by] = ACTIONS(153),
    [anon_sym_carrier] = ACTIONS(153),
    [anon_sym_cascade] = ACTIONS(153),
    [anon_sym_city] = ACTIONS(153),
    [anon_sym_clad] = ACTIONS(153),
    [anon_sym_confidence] = ACTIONS(153),
    [anon_sym_corrected] = ACTIONS(153),
    [anon_sym_cw] = ACTIONS(153),
    [anon_sym_dB] = ACTIONS(153),
    [anon_sym_dBW] = ACTIONS(153),
    [anon_sym_dBd] = ACTIONS(153),
    [anon_sym_dBi] = ACTIONS(153),
    [anon_sym_dBm] = ACTIONS(153),
    [anon_sym_data] = ACTIONS(153),
    [anon_sym_date] = ACTIONS(153),
    [anon_sym_datum] = ACTIONS(153),
    [anon_sym_dc_DASHinput] = ACTIONS(153),
    [anon_sym_degrees] = ACTIONS(153),
    [anon_sym_delivered] = ACTIONS(153),
    [anon_sym_desense] = ACTIONS(153),
    [anon_sym_displayed] = ACTIONS(153),
    [anon_sym_dms] = ACTIONS(153),
    [anon_sym_down] = ACTIONS(153),
    [anon_sym_eirp] = ACTIONS(153),
    [anon_sym_elevation] = ACTIONS(153),
    [anon_sym_ends] = ACTIONS(153),
    [anon_sym_erp] = ACTIONS(153),
    [anon_sym_etrs89] = ACTIONS(153),
    [anon_sym_figure] = ACTIONS(153),
    [anon_sym_fm] = ACTIONS(153),
    [anon_sym_for] = ACTIONS(153),
    [anon_sym_forward] = ACTIONS(153),
    [anon_sym_free_DASHspace] = ACTIONS(153),
    [anon_sym_frequency] = ACTIONS(153),
    [anon_sym_ft] = ACTIONS(153),
    [anon_sym_full] = ACTIONS(153),
    [anon_sym_guess] = ACTIONS(153),
    [anon_sym_hata_DASHopen] = ACTIONS(153),
    [anon_sym_hata_DASHsuburban] = ACTIONS(153),
    [anon_sym_hata_DASHurban] = ACTIONS(153),
    [anon_sym_height_DASHamsl] = ACTIONS(153),
    [anon_sym_horizontal] = ACTIONS(153),
    [anon_sym_if] = ACTIONS(153),
    [anon_sym_in] = ACTIONS(153),
    [anon_sym_input] = ACTIONS(153),
    [anon_sym_instead] = ACTIONS(153),
    [anon_sym_k] = ACTIONS(153),
    [anon_sym_kHz] = ACTIONS(153),
    [anon_sym_kW] = ACTIONS(153),
    [anon_sym_km] = ACTIONS(153),
    [anon_sym_latitude] = ACTIONS(153),
    [anon_sym_longitude] = ACTIONS(153),
    [anon_sym_m] = ACTIONS(153),
    [anon_sym_mW] = ACTIONS(153),
    [anon_sym_maximum] = ACTIONS(153),
    [anon_sym_mean] = ACTIONS(153),
    [anon_sym_medium] = ACTIONS(153),
    [anon_sym_nad27] = ACTIONS(153),
    [anon_sym_nad83] = ACTIONS(153),
    [anon_sym_net] = ACTIONS(153),
    [anon_sym_no] = ACTIONS(153),
    [anon_sym_nominal] = ACTIONS(153),
    [anon_sym_occupational] = ACTIONS(153),
    [anon_sym_of] = ACTIONS(153),
    [anon_sym_offset] = ACTIONS(153),
    [anon_sym_on] = ACTIONS(153),
    [anon_sym_one_DASHedge] = ACTIONS(153),
    [anon_sym_out] = ACTIONS(153),
    [anon_sym_output] = ACTIONS(153),
    [anon_sym_over] = ACTIONS(153),
    [anon_sym_pep] = ACTIONS(153),
    [anon_sym_per] = ACTIONS(153),
    [anon_sym_places] = ACTIONS(153),
    [anon_sym_public] = ACTIONS(153),
    [anon_sym_quiet_DASHrural] = ACTIONS(153),
    [anon_sym_quieting] = ACTIONS(153),
    [anon_sym_rated] = ACTIONS(153),
    [anon_sym_reactance] = ACTIONS(153),
    [anon_sym_reading] = ACTIONS(153),
    [anon_sym_realized] = ACTIONS(153),
    [anon_sym_receive_DASHfrequency] = ACTIONS(153),
    [anon_sym_receive_DASHloss] = ACTIONS(153),
    [anon_sym_reference] = ACTIONS(153),
    [anon_sym_reflected] = ACTIONS(153),
    [anon_sym_rejects] = ACTIONS(153),
    [anon_sym_residential] = ACTIONS(153),
    [anon_sym_rural] = ACTIONS(153),
    [anon_sym_series] = ACTIONS(153),
    [anon_sym_shared] = ACTIONS(153),
    [anon_sym_sheet] = ACTIONS(153),
    [anon_sym_shunt] = ACTIONS(153),
    [anon_sym_sinad] = ACTIONS(153),
    [anon_sym_since] = ACTIONS(153),
    [anon_sym_snr] = ACTIONS(153),
    [anon_sym_spread] = ACTIONS(153),
    [anon_sym_ssb] = ACTIONS(153),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(153),
    [anon_sym_then] = ACTIONS(153),
    [anon_sym_title] = ACTIONS(153),
    [anon_sym_to] = ACTIONS(153),
    [anon_sym_total] = ACTIONS(153),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(153),
    [anon_sym_two_DASHray] = ACTIONS(153),
    [anon_sym_typical] = ACTIONS(153),
    [anon_sym_up] = ACTIONS(153),
    [anon_sym_vertical] = ACTIONS(153),
    [anon_sym_way] = ACTIONS(153),
    [anon_sym_wet] = ACTIONS(153),
    [anon_sym_wgs84] = ACTIONS(153),
    [anon_sym_with] = ACTIONS(153),
    [anon_sym_within] = ACTIONS(153),
    [anon_sym_yes] = ACTIONS(153),
    [anon_sym_COMMA] = ACTIONS(151),
    [anon_sym_EQ] = ACTIONS(151),
    [anon_sym_u00b1] = ACTIONS(151),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(151),
    [anon_sym_LPAREN] = ACTIONS(151),
    [anon_sym_DASH] = ACTIONS(153),
    [anon_sym_u2212] = ACTIONS(153),
    [anon_sym_u2013] = ACTIONS(153),
    [anon_sym_PLUS] = ACTIONS(153),
    [anon_sym_STAR] = ACTIONS(151),
    [anon_sym_SLASH] = ACTIONS(153),
    [anon_sym_CARET] = ACTIONS(151),
    [sym__glued] = ACTIONS(153),
    [sym_date] = ACTIONS(153),
    [sym_dms] = ACTIONS(151),
    [sym_number] = ACTIONS(153),
    [sym_digit_name] = ACTIONS(153),
    [sym_string] = ACTIONS(151),
    [sym_comment] = ACTIONS(3),
  },
  [19] = {
    [ts_builtin_sym_end] = ACTIONS(155),
    [sym_name] = ACTIONS(157),
    [aux_sym__end_token1] = ACTIONS(155),
    [anon_sym_SEMI] = ACTIONS(155),
    [anon_sym_LBRACE] = ACTIONS(155),
    [anon_sym_RBRACE] = ACTIONS(155),
    [anon_sym_use] = ACTIONS(157),
    [anon_sym_band] = ACTIONS(157),
    [anon_sym_let] = ACTIONS(157),
    [anon_sym_cable] = ACTIONS(157),
    [anon_sym_connector] = ACTIONS(157),
    [anon_sym_device] = ACTIONS(157),
    [anon_sym_instrument] = ACTIONS(157),
    [anon_sym_session] = ACTIONS(157),
    [anon_sym_station] = ACTIONS(157),
    [anon_sym_chain] = ACTIONS(157),
    [anon_sym_licence] = ACTIONS(157),
    [anon_sym_rules] = ACTIONS(157),
    [anon_sym_link] = ACTIONS(157),
    [anon_sym_variant] = ACTIONS(157),
    [anon_sym_accept] = ACTIONS(157),
    [anon_sym_transmit] = ACTIONS(157),
    [anon_sym_receive] = ACTIONS(157),
    [anon_sym_impedance] = ACTIONS(157),
    [anon_sym_velocity] = ACTIONS(157),
    [anon_sym_loss] = ACTIONS(157),
    [anon_sym_construction] = ACTIONS(157),
    [anon_sym_wires] = ACTIONS(157),
    [anon_sym_valid] = ACTIONS(157),
    [anon_sym_accuracy] = ACTIONS(157),
    [anon_sym_rating] = ACTIONS(157),
    [anon_sym_voltage] = ACTIONS(157),
    [anon_sym_size] = ACTIONS(157),
    [anon_sym_conductor] = ACTIONS(157),
    [anon_sym_source] = ACTIONS(157),
    [anon_sym_recalled] = ACTIONS(157),
    [anon_sym_joins] = ACTIONS(157),
    [anon_sym_limit] = ACTIONS(157),
    [anon_sym_family] = ACTIONS(157),
    [anon_sym_bump] = ACTIONS(157),
    [anon_sym_return_DASHloss] = ACTIONS(157),
    [anon_sym_swr] = ACTIONS(157),
    [anon_sym_kind] = ACTIONS(157),
    [anon_sym_high] = ACTIONS(157),
    [anon_sym_low] = ACTIONS(157),
    [anon_sym_port] = ACTIONS(157),
    [anon_sym_from] = ACTIONS(157),
    [anon_sym_isolation] = ACTIONS(157),
    [anon_sym_ratio] = ACTIONS(157),
    [anon_sym_split] = ACTIONS(157),
    [anon_sym_tee] = ACTIONS(157),
    [anon_sym_reversed] = ACTIONS(157),
    [anon_sym_passes] = ACTIONS(157),
    [anon_sym_gain] = ACTIONS(157),
    [anon_sym_noise] = ACTIONS(157),
    [anon_sym_excess] = ACTIONS(157),
    [anon_sym_ways] = ACTIONS(157),
    [anon_sym_coupled] = ACTIONS(157),
    [anon_sym_calibrated] = ACTIONS(157),
    [anon_sym_scale] = ACTIONS(157),
    [anon_sym_resolution] = ACTIONS(157),
    [anon_sym_due] = ACTIONS(157),
    [anon_sym_linearity] = ACTIONS(157),
    [anon_sym_repeatability] = ACTIONS(157),
    [anon_sym_directivity] = ACTIONS(157),
    [anon_sym_certificate] = ACTIONS(157),
    [anon_sym_load] = ACTIONS(157),
    [anon_sym_read] = ACTIONS(157),
    [anon_sym_temperature] = ACTIONS(157),
    [anon_sym_generator] = ACTIONS(157),
    [anon_sym_drift] = ACTIONS(157),
    [anon_sym_piece] = ACTIONS(157),
    [anon_sym_readings] = ACTIONS(157),
    [anon_sym_resonance] = ACTIONS(157),
    [anon_sym_delay] = ACTIONS(157),
    [anon_sym_phase] = ACTIONS(157),
    [anon_sym_adapter] = ACTIONS(157),
    [anon_sym_position] = ACTIONS(157),
    [anon_sym_ground] = ACTIONS(157),
    [anon_sym_place] = ACTIONS(157),
    [anon_sym_under] = ACTIONS(157),
    [anon_sym_beside] = ACTIONS(157),
    [anon_sym_spot] = ACTIONS(157),
    [anon_sym_alone] = ACTIONS(157),
    [anon_sym_site_DASHnoise] = ACTIONS(157),
    [anon_sym_transmitter] = ACTIONS(157),
    [anon_sym_receiver] = ACTIONS(157),
    [anon_sym_transceiver] = ACTIONS(157),
    [anon_sym_run] = ACTIONS(157),
    [anon_sym_jumper] = ACTIONS(157),
    [anon_sym_tail] = ACTIONS(157),
    [anon_sym_pad] = ACTIONS(157),
    [anon_sym_filter] = ACTIONS(157),
    [anon_sym_isolator] = ACTIONS(157),
    [anon_sym_circulator] = ACTIONS(157),
    [anon_sym_protector] = ACTIONS(157),
    [anon_sym_switch] = ACTIONS(157),
    [anon_sym_coupler] = ACTIONS(157),
    [anon_sym_meter] = ACTIONS(157),
    [anon_sym_balun] = ACTIONS(157),
    [anon_sym_tuner] = ACTIONS(157),
    [anon_sym_duplexer] = ACTIONS(157),
    [anon_sym_diplexer] = ACTIONS(157),
    [anon_sym_combiner] = ACTIONS(157),
    [anon_sym_divider] = ACTIONS(157),
    [anon_sym_amplifier] = ACTIONS(157),
    [anon_sym_preamplifier] = ACTIONS(157),
    [anon_sym_antenna] = ACTIONS(157),
    [anon_sym_branches] = ACTIONS(157),
    [anon_sym_expect] = ACTIONS(157),
    [anon_sym_authority] = ACTIONS(157),
    [anon_sym_jurisdiction] = ACTIONS(157),
    [anon_sym_service] = ACTIONS(157),
    [anon_sym_edition] = ACTIONS(157),
    [anon_sym_dated] = ACTIONS(157),
    [anon_sym_until] = ACTIONS(157),
    [anon_sym_holder] = ACTIONS(157),
    [anon_sym_class] = ACTIONS(157),
    [anon_sym_ask] = ACTIONS(157),
    [anon_sym_threshold] = ACTIONS(157),
    [anon_sym_fixed] = ACTIONS(157),
    [anon_sym_condition] = ACTIONS(157),
    [anon_sym_reflection] = ACTIONS(157),
    [anon_sym_field] = ACTIONS(157),
    [anon_sym_hop] = ACTIONS(157),
    [anon_sym_profile] = ACTIONS(157),
    [anon_sym_distance] = ACTIONS(157),
    [anon_sym_k_DASHfactor] = ACTIONS(157),
    [anon_sym_need] = ACTIONS(157),
    [anon_sym_model] = ACTIONS(157),
    [anon_sym_coverage] = ACTIONS(157),
    [anon_sym_take] = ACTIONS(157),
    [anon_sym_put] = ACTIONS(157),
    [anon_sym_branch] = ACTIONS(157),
    [anon_sym_inner] = ACTIONS(157),
    [anon_sym_outer] = ACTIONS(157),
    [anon_sym_permittivity] = ACTIONS(157),
    [anon_sym_loss_DASHtangent] = ACTIONS(157),
    [anon_sym_strand] = ACTIONS(157),
    [anon_sym_strand_DASHdiameter] = ACTIONS(157),
    [anon_sym_braid] = ACTIONS(157),
    [anon_sym_resistivity] = ACTIONS(157),
    [anon_sym_inner_DASHresistivity] = ACTIONS(157),
    [anon_sym_outer_DASHresistivity] = ACTIONS(157),
    [anon_sym_diameter] = ACTIONS(157),
    [anon_sym_spacing] = ACTIONS(157),
    [anon_sym_baseline] = ACTIONS(157),
    [anon_sym_through] = ACTIONS(157),
    [anon_sym_open] = ACTIONS(157),
    [anon_sym_short] = ACTIONS(157),
    [anon_sym_equalise] = ACTIONS(157),
    [anon_sym_power] = ACTIONS(157),
    [anon_sym_mode] = ACTIONS(157),
    [anon_sym_duty] = ACTIONS(157),
    [anon_sym_keyed] = ACTIONS(157),
    [anon_sym_foldback] = ACTIONS(157),
    [anon_sym_bandwidth] = ACTIONS(157),
    [anon_sym_sensitivity] = ACTIONS(157),
    [anon_sym_blocking] = ACTIONS(157),
    [anon_sym_efficiency] = ACTIONS(157),
    [anon_sym_height] = ACTIONS(157),
    [anon_sym_pattern] = ACTIONS(157),
    [anon_sym_haat] = ACTIONS(157),
    [anon_sym_radius] = ACTIONS(157),
    [anon_sym_fails] = ACTIONS(157),
    [anon_sym_GHz] = ACTIONS(157),
    [anon_sym_Hz] = ACTIONS(157),
    [anon_sym_MHz] = ACTIONS(157),
    [anon_sym_above] = ACTIONS(157),
    [anon_sym_added] = ACTIONS(157),
    [anon_sym_after] = ACTIONS(157),
    [anon_sym_against] = ACTIONS(157),
    [anon_sym_agl] = ACTIONS(157),
    [anon_sym_allocated] = ACTIONS(157),
    [anon_sym_am] = ACTIONS(157),
    [anon_sym_ambient] = ACTIONS(157),
    [anon_sym_amsl] = ACTIONS(157),
    [anon_sym_apart] = ACTIONS(157),
    [anon_sym_at] = ACTIONS(157),
    [anon_sym_averaging] = ACTIONS(157),
    [anon_sym_below] = ACTIONS(157),
    [anon_sym_beyond] = ACTIONS(157),
    [anon_sym_blank] = ACTIONS(157),
    [anon_sym_bow] = ACTIONS(157),
    [anon_sym_bullington] = ACTIONS(157),
    [anon_sym_by] = ACTIONS(157),
    [anon_sym_carrier] = ACTIONS(157),
    [anon_sym_cascade] = ACTIONS(157),
    [anon_sym_city] = ACTIONS(157),
    [anon_sym_clad] = ACTIONS(157),
    [anon_sym_confidence] = ACTIONS(157),
    [anon_sym_corrected] = ACTIONS(157),
    [anon_sym_cw] = ACTIONS(157),
    [anon_sym_dB] = ACTIONS(157),
    [anon_sym_dBW] = ACTIONS(157),
    [anon_sym_dBd] = ACTIONS(157),
    [anon_sym_dBi] = ACTIONS(157),
    [anon_sym_dBm] = ACTIONS(157),
    [anon_sym_data] = ACTIONS(157),
    [anon_sym_date] = ACTIONS(157),
    [anon_sym_datum] = ACTIONS(157),
    [anon_sym_dc_DASHinput] = ACTIONS(157),
    [anon_sym_degrees] = ACTIONS(157),
    [anon_sym_delivered] = ACTIONS(157),
    [anon_sym_desense] = ACTIONS(157),
    [anon_sym_displayed] = ACTIONS(157),
    [anon_sym_dms] = ACTIONS(157),
    [anon_sym_down] = ACTIONS(157),
    [anon_sym_eirp] = ACTIONS(157),
    [anon_sym_elevation] = ACTIONS(157),
    [anon_sym_ends] = ACTIONS(157),
    [anon_sym_erp] = ACTIONS(157),
    [anon_sym_etrs89] = ACTIONS(157),
    [anon_sym_figure] = ACTIONS(157),
    [anon_sym_fm] = ACTIONS(157),
    [anon_sym_for] = ACTIONS(157),
    [anon_sym_forward] = ACTIONS(157),
    [anon_sym_free_DASHspace] = ACTIONS(157),
    [anon_sym_frequency] = ACTIONS(157),
    [anon_sym_ft] = ACTIONS(157),
    [anon_sym_full] = ACTIONS(157),
    [anon_sym_guess] = ACTIONS(157),
    [anon_sym_hata_DASHopen] = ACTIONS(157),
    [anon_sym_hata_DASHsuburban] = ACTIONS(157),
    [anon_sym_hata_DASHurban] = ACTIONS(157),
    [anon_sym_height_DASHamsl] = ACTIONS(157),
    [anon_sym_horizontal] = ACTIONS(157),
    [anon_sym_if] = ACTIONS(157),
    [anon_sym_in] = ACTIONS(157),
    [anon_sym_input] = ACTIONS(157),
    [anon_sym_instead] = ACTIONS(157),
    [anon_sym_k] = ACTIONS(157),
    [anon_sym_kHz] = ACTIONS(157),
    [anon_sym_kW] = ACTIONS(157),
    [anon_sym_km] = ACTIONS(157),
    [anon_sym_latitude] = ACTIONS(157),
    [anon_sym_longitude] = ACTIONS(157),
    [anon_sym_m] = ACTIONS(157),
    [anon_sym_mW] = ACTIONS(157),
    [anon_sym_maximum] = ACTIONS(157),
    [anon_sym_mean] = ACTIONS(157),
    [anon_sym_medium] = ACTIONS(157),
    [anon_sym_nad27] = ACTIONS(157),
    [anon_sym_nad83] = ACTIONS(157),
    [anon_sym_net] = ACTIONS(157),
    [anon_sym_no] = ACTIONS(157),
    [anon_sym_nominal] = ACTIONS(157),
    [anon_sym_occupational] = ACTIONS(157),
    [anon_sym_of] = ACTIONS(157),
    [anon_sym_offset] = ACTIONS(157),
    [anon_sym_on] = ACTIONS(157),
    [anon_sym_one_DASHedge] = ACTIONS(157),
    [anon_sym_out] = ACTIONS(157),
    [anon_sym_output] = ACTIONS(157),
    [anon_sym_over] = ACTIONS(157),
    [anon_sym_pep] = ACTIONS(157),
    [anon_sym_per] = ACTIONS(157),
    [anon_sym_places] = ACTIONS(157),
    [anon_sym_public] = ACTIONS(157),
    [anon_sym_quiet_DASHrural] = ACTIONS(157),
    [anon_sym_quieting] = ACTIONS(157),
    [anon_sym_rated] = ACTIONS(157),
    [anon_sym_reactance] = ACTIONS(157),
    [anon_sym_reading] = ACTIONS(157),
    [anon_sym_realized] = ACTIONS(157),
    [anon_sym_receive_DASHfrequency] = ACTIONS(157),
    [anon_sym_receive_DASHloss] = ACTIONS(157),
    [anon_sym_reference] = ACTIONS(157),
    [anon_sym_reflected] = ACTIONS(157),
    [anon_sym_rejects] = ACTIONS(157),
    [anon_sym_residential] = ACTIONS(157),
    [anon_sym_rural] = ACTIONS(157),
    [anon_sym_series] = ACTIONS(157),
    [anon_sym_shared] = ACTIONS(157),
    [anon_sym_sheet] = ACTIONS(157),
    [anon_sym_shunt] = ACTIONS(157),
    [anon_sym_sinad] = ACTIONS(157),
    [anon_sym_since] = ACTIONS(157),
    [anon_sym_snr] = ACTIONS(157),
    [anon_sym_spread] = ACTIONS(157),
    [anon_sym_ssb] = ACTIONS(157),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(157),
    [anon_sym_then] = ACTIONS(157),
    [anon_sym_title] = ACTIONS(157),
    [anon_sym_to] = ACTIONS(157),
    [anon_sym_total] = ACTIONS(157),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(157),
    [anon_sym_two_DASHray] = ACTIONS(157),
    [anon_sym_typical] = ACTIONS(157),
    [anon_sym_up] = ACTIONS(157),
    [anon_sym_vertical] = ACTIONS(157),
    [anon_sym_way] = ACTIONS(157),
    [anon_sym_wet] = ACTIONS(157),
    [anon_sym_wgs84] = ACTIONS(157),
    [anon_sym_with] = ACTIONS(157),
    [anon_sym_within] = ACTIONS(157),
    [anon_sym_yes] = ACTIONS(157),
    [anon_sym_COMMA] = ACTIONS(155),
    [anon_sym_EQ] = ACTIONS(155),
    [anon_sym_u00b1] = ACTIONS(155),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(155),
    [anon_sym_LPAREN] = ACTIONS(155),
    [anon_sym_DASH] = ACTIONS(157),
    [anon_sym_u2212] = ACTIONS(157),
    [anon_sym_u2013] = ACTIONS(157),
    [anon_sym_PLUS] = ACTIONS(157),
    [anon_sym_STAR] = ACTIONS(155),
    [anon_sym_SLASH] = ACTIONS(157),
    [anon_sym_CARET] = ACTIONS(155),
    [sym__glued] = ACTIONS(157),
    [sym_date] = ACTIONS(157),
    [sym_dms] = ACTIONS(155),
    [sym_number] = ACTIONS(157),
    [sym_digit_name] = ACTIONS(157),
    [sym_string] = ACTIONS(155),
    [sym_comment] = ACTIONS(3),
  },
  [20] = {
    [ts_builtin_sym_end] = ACTIONS(159),
    [sym_name] = ACTIONS(161),
    [aux_sym__end_token1] = ACTIONS(159),
    [anon_sym_SEMI] = ACTIONS(159),
    [anon_sym_LBRACE] = ACTIONS(159),
    [anon_sym_RBRACE] = ACTIONS(159),
    [anon_sym_use] = ACTIONS(161),
    [anon_sym_band] = ACTIONS(161),
    [anon_sym_let] = ACTIONS(161),
    [anon_sym_cable] = ACTIONS(161),
    [anon_sym_connector] = ACTIONS(161),
    [anon_sym_device] = ACTIONS(161),
    [anon_sym_instrument] = ACTIONS(161),
    [anon_sym_session] = ACTIONS(161),
    [anon_sym_station] = ACTIONS(161),
    [anon_sym_chain] = ACTIONS(161),
    [anon_sym_licence] = ACTIONS(161),
    [anon_sym_rules] = ACTIONS(161),
    [anon_sym_link] = ACTIONS(161),
    [anon_sym_variant] = ACTIONS(161),
    [anon_sym_accept] = ACTIONS(161),
    [anon_sym_transmit] = ACTIONS(161),
    [anon_sym_receive] = ACTIONS(161),
    [anon_sym_impedance] = ACTIONS(161),
    [anon_sym_velocity] = ACTIONS(161),
    [anon_sym_loss] = ACTIONS(161),
    [anon_sym_construction] = ACTIONS(161),
    [anon_sym_wires] = ACTIONS(161),
    [anon_sym_valid] = ACTIONS(161),
    [anon_sym_accuracy] = ACTIONS(161),
    [anon_sym_rating] = ACTIONS(161),
    [anon_sym_voltage] = ACTIONS(161),
    [anon_sym_size] = ACTIONS(161),
    [anon_sym_conductor] = ACTIONS(161),
    [anon_sym_source] = ACTIONS(161),
    [anon_sym_recalled] = ACTIONS(161),
    [anon_sym_joins] = ACTIONS(161),
    [anon_sym_limit] = ACTIONS(161),
    [anon_sym_family] = ACTIONS(161),
    [anon_sym_bump] = ACTIONS(161),
    [anon_sym_return_DASHloss] = ACTIONS(161),
    [anon_sym_swr] = ACTIONS(161),
    [anon_sym_kind] = ACTIONS(161),
    [anon_sym_high] = ACTIONS(161),
    [anon_sym_low] = ACTIONS(161),
    [anon_sym_port] = ACTIONS(161),
    [anon_sym_from] = ACTIONS(161),
    [anon_sym_isolation] = ACTIONS(161),
    [anon_sym_ratio] = ACTIONS(161),
    [anon_sym_split] = ACTIONS(161),
    [anon_sym_tee] = ACTIONS(161),
    [anon_sym_reversed] = ACTIONS(161),
    [anon_sym_passes] = ACTIONS(161),
    [anon_sym_gain] = ACTIONS(161),
    [anon_sym_noise] = ACTIONS(161),
    [anon_sym_excess] = ACTIONS(161),
    [anon_sym_ways] = ACTIONS(161),
    [anon_sym_coupled] = ACTIONS(161),
    [anon_sym_calibrated] = ACTIONS(161),
    [anon_sym_scale] = ACTIONS(161),
    [anon_sym_resolution] = ACTIONS(161),
    [anon_sym_due] = ACTIONS(161),
    [anon_sym_linearity] = ACTIONS(161),
    [anon_sym_repeatability] = ACTIONS(161),
    [anon_sym_directivity] = ACTIONS(161),
    [anon_sym_certificate] = ACTIONS(161),
    [anon_sym_load] = ACTIONS(161),
    [anon_sym_read] = ACTIONS(161),
    [anon_sym_temperature] = ACTIONS(161),
    [anon_sym_generator] = ACTIONS(161),
    [anon_sym_drift] = ACTIONS(161),
    [anon_sym_piece] = ACTIONS(161),
    [anon_sym_readings] = ACTIONS(161),
    [anon_sym_resonance] = ACTIONS(161),
    [anon_sym_delay] = ACTIONS(161),
    [anon_sym_phase] = ACTIONS(161),
    [anon_sym_adapter] = ACTIONS(161),
    [anon_sym_position] = ACTIONS(161),
    [anon_sym_ground] = ACTIONS(161),
    [anon_sym_place] = ACTIONS(161),
    [anon_sym_under] = ACTIONS(161),
    [anon_sym_beside] = ACTIONS(161),
    [anon_sym_spot] = ACTIONS(161),
    [anon_sym_alone] = ACTIONS(161),
    [anon_sym_site_DASHnoise] = ACTIONS(161),
    [anon_sym_transmitter] = ACTIONS(161),
    [anon_sym_receiver] = ACTIONS(161),
    [anon_sym_transceiver] = ACTIONS(161),
    [anon_sym_run] = ACTIONS(161),
    [anon_sym_jumper] = ACTIONS(161),
    [anon_sym_tail] = ACTIONS(161),
    [anon_sym_pad] = ACTIONS(161),
    [anon_sym_filter] = ACTIONS(161),
    [anon_sym_isolator] = ACTIONS(161),
    [anon_sym_circulator] = ACTIONS(161),
    [anon_sym_protector] = ACTIONS(161),
    [anon_sym_switch] = ACTIONS(161),
    [anon_sym_coupler] = ACTIONS(161),
    [anon_sym_meter] = ACTIONS(161),
    [anon_sym_balun] = ACTIONS(161),
    [anon_sym_tuner] = ACTIONS(161),
    [anon_sym_duplexer] = ACTIONS(161),
    [anon_sym_diplexer] = ACTIONS(161),
    [anon_sym_combiner] = ACTIONS(161),
    [anon_sym_divider] = ACTIONS(161),
    [anon_sym_amplifier] = ACTIONS(161),
    [anon_sym_preamplifier] = ACTIONS(161),
    [anon_sym_antenna] = ACTIONS(161),
    [anon_sym_branches] = ACTIONS(161),
    [anon_sym_expect] = ACTIONS(161),
    [anon_sym_authority] = ACTIONS(161),
    [anon_sym_jurisdiction] = ACTIONS(161),
    [anon_sym_service] = ACTIONS(161),
    [anon_sym_edition] = ACTIONS(161),
    [anon_sym_dated] = ACTIONS(161),
    [anon_sym_until] = ACTIONS(161),
    [anon_sym_holder] = ACTIONS(161),
    [anon_sym_class] = ACTIONS(161),
    [anon_sym_ask] = ACTIONS(161),
    [anon_sym_threshold] = ACTIONS(161),
    [anon_sym_fixed] = ACTIONS(161),
    [anon_sym_condition] = ACTIONS(161),
    [anon_sym_reflection] = ACTIONS(161),
    [anon_sym_field] = ACTIONS(161),
    [anon_sym_hop] = ACTIONS(161),
    [anon_sym_profile] = ACTIONS(161),
    [anon_sym_distance] = ACTIONS(161),
    [anon_sym_k_DASHfactor] = ACTIONS(161),
    [anon_sym_need] = ACTIONS(161),
    [anon_sym_model] = ACTIONS(161),
    [anon_sym_coverage] = ACTIONS(161),
    [anon_sym_take] = ACTIONS(161),
    [anon_sym_put] = ACTIONS(161),
    [anon_sym_branch] = ACTIONS(161),
    [anon_sym_inner] = ACTIONS(161),
    [anon_sym_outer] = ACTIONS(161),
    [anon_sym_permittivity] = ACTIONS(161),
    [anon_sym_loss_DASHtangent] = ACTIONS(161),
    [anon_sym_strand] = ACTIONS(161),
    [anon_sym_strand_DASHdiameter] = ACTIONS(161),
    [anon_sym_braid] = ACTIONS(161),
    [anon_sym_resistivity] = ACTIONS(161),
    [anon_sym_inner_DASHresistivity] = ACTIONS(161),
    [anon_sym_outer_DASHresistivity] = ACTIONS(161),
    [anon_sym_diameter] = ACTIONS(161),
    [anon_sym_spacing] = ACTIONS(161),
    [anon_sym_baseline] = ACTIONS(161),
    [anon_sym_through] = ACTIONS(161),
    [anon_sym_open] = ACTIONS(161),
    [anon_sym_short] = ACTIONS(161),
    [anon_sym_equalise] = ACTIONS(161),
    [anon_sym_power] = ACTIONS(161),
    [anon_sym_mode] = ACTIONS(161),
    [anon_sym_duty] = ACTIONS(161),
    [anon_sym_keyed] = ACTIONS(161),
    [anon_sym_foldback] = ACTIONS(161),
    [anon_sym_bandwidth] = ACTIONS(161),
    [anon_sym_sensitivity] = ACTIONS(161),
    [anon_sym_blocking] = ACTIONS(161),
    [anon_sym_efficiency] = ACTIONS(161),
    [anon_sym_height] = ACTIONS(161),
    [anon_sym_pattern] = ACTIONS(161),
    [anon_sym_haat] = ACTIONS(161),
    [anon_sym_radius] = ACTIONS(161),
    [anon_sym_fails] = ACTIONS(161),
    [anon_sym_GHz] = ACTIONS(161),
    [anon_sym_Hz] = ACTIONS(161),
    [anon_sym_MHz] = ACTIONS(161),
    [anon_sym_above] = ACTIONS(161),
    [anon_sym_added] = ACTIONS(161),
    [anon_sym_after] = ACTIONS(161),
    [anon_sym_against] = ACTIONS(161),
    [anon_sym_agl] = ACTIONS(161),
    [anon_sym_allocated] = ACTIONS(161),
    [anon_sym_am] = ACTIONS(161),
    [anon_sym_ambient] = ACTIONS(161),
    [anon_sym_amsl] = ACTIONS(161),
    [anon_sym_apart] = ACTIONS(161),
    [anon_sym_at] = ACTIONS(161),
    [anon_sym_averaging] = ACTIONS(161),
    [anon_sym_below] = ACTIONS(161),
    [anon_sym_beyond] = ACTIONS(161),
    [anon_sym_blank] = ACTIONS(161),
    [anon_sym_bow] = ACTIONS(161),
    [anon_sym_bullington] = ACTIONS(161),
    [anon_sym_by] = ACTIONS(161),
    [anon_sym_carrier] = ACTIONS(161),
    [anon_sym_cascade] = ACTIONS(161),
    [anon_sym_city] = ACTIONS(161),
    [anon_sym_clad] = ACTIONS(161),
    [anon_sym_confidence] = ACTIONS(161),
    [anon_sym_corrected] = ACTIONS(161),
    [anon_sym_cw] = ACTIONS(161),
    [anon_sym_dB] = ACTIONS(161),
    [anon_sym_dBW] = ACTIONS(161),
    [anon_sym_dBd] = ACTIONS(161),
    [anon_sym_dBi] = ACTIONS(161),
    [anon_sym_dBm] = ACTIONS(161),
    [anon_sym_data] = ACTIONS(161),
    [anon_sym_date] = ACTIONS(161),
    [anon_sym_datum] = ACTIONS(161),
    [anon_sym_dc_DASHinput] = ACTIONS(161),
    [anon_sym_degrees] = ACTIONS(161),
    [anon_sym_delivered] = ACTIONS(161),
    [anon_sym_desense] = ACTIONS(161),
    [anon_sym_displayed] = ACTIONS(161),
    [anon_sym_dms] = ACTIONS(161),
    [anon_sym_down] = ACTIONS(161),
    [anon_sym_eirp] = ACTIONS(161),
    [anon_sym_elevation] = ACTIONS(161),
    [anon_sym_ends] = ACTIONS(161),
    [anon_sym_erp] = ACTIONS(161),
    [anon_sym_etrs89] = ACTIONS(161),
    [anon_sym_figure] = ACTIONS(161),
    [anon_sym_fm] = ACTIONS(161),
    [anon_sym_for] = ACTIONS(161),
    [anon_sym_forward] = ACTIONS(161),
    [anon_sym_free_DASHspace] = ACTIONS(161),
    [anon_sym_frequency] = ACTIONS(161),
    [anon_sym_ft] = ACTIONS(161),
    [anon_sym_full] = ACTIONS(161),
    [anon_sym_guess] = ACTIONS(161),
    [anon_sym_hata_DASHopen] = ACTIONS(161),
    [anon_sym_hata_DASHsuburban] = ACTIONS(161),
    [anon_sym_hata_DASHurban] = ACTIONS(161),
    [anon_sym_height_DASHamsl] = ACTIONS(161),
    [anon_sym_horizontal] = ACTIONS(161),
    [anon_sym_if] = ACTIONS(161),
    [anon_sym_in] = ACTIONS(161),
    [anon_sym_input] = ACTIONS(161),
    [anon_sym_instead] = ACTIONS(161),
    [anon_sym_k] = ACTIONS(161),
    [anon_sym_kHz] = ACTIONS(161),
    [anon_sym_kW] = ACTIONS(161),
    [anon_sym_km] = ACTIONS(161),
    [anon_sym_latitude] = ACTIONS(161),
    [anon_sym_longitude] = ACTIONS(161),
    [anon_sym_m] = ACTIONS(161),
    [anon_sym_mW] = ACTIONS(161),
    [anon_sym_maximum] = ACTIONS(161),
    [anon_sym_mean] = ACTIONS(161),
    [anon_sym_medium] = ACTIONS(161),
    [anon_sym_nad27] = ACTIONS(161),
    [anon_sym_nad83] = ACTIONS(161),
    [anon_sym_net] = ACTIONS(161),
    [anon_sym_no] = ACTIONS(161),
    [anon_sym_nominal] = ACTIONS(161),
    [anon_sym_occupational] = ACTIONS(161),
    [anon_sym_of] = ACTIONS(161),
    [anon_sym_offset] = ACTIONS(161),
    [anon_sym_on] = ACTIONS(161),
    [anon_sym_one_DASHedge] = ACTIONS(161),
    [anon_sym_out] = ACTIONS(161),
    [anon_sym_output] = ACTIONS(161),
    [anon_sym_over] = ACTIONS(161),
    [anon_sym_pep] = ACTIONS(161),
    [anon_sym_per] = ACTIONS(161),
    [anon_sym_places] = ACTIONS(161),
    [anon_sym_public] = ACTIONS(161),
    [anon_sym_quiet_DASHrural] = ACTIONS(161),
    [anon_sym_quieting] = ACTIONS(161),
    [anon_sym_rated] = ACTIONS(161),
    [anon_sym_reactance] = ACTIONS(161),
    [anon_sym_reading] = ACTIONS(161),
    [anon_sym_realized] = ACTIONS(161),
    [anon_sym_receive_DASHfrequency] = ACTIONS(161),
    [anon_sym_receive_DASHloss] = ACTIONS(161),
    [anon_sym_reference] = ACTIONS(161),
    [anon_sym_reflected] = ACTIONS(161),
    [anon_sym_rejects] = ACTIONS(161),
    [anon_sym_residential] = ACTIONS(161),
    [anon_sym_rural] = ACTIONS(161),
    [anon_sym_series] = ACTIONS(161),
    [anon_sym_shared] = ACTIONS(161),
    [anon_sym_sheet] = ACTIONS(161),
    [anon_sym_shunt] = ACTIONS(161),
    [anon_sym_sinad] = ACTIONS(161),
    [anon_sym_since] = ACTIONS(161),
    [anon_sym_snr] = ACTIONS(161),
    [anon_sym_spread] = ACTIONS(161),
    [anon_sym_ssb] = ACTIONS(161),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(161),
    [anon_sym_then] = ACTIONS(161),
    [anon_sym_title] = ACTIONS(161),
    [anon_sym_to] = ACTIONS(161),
    [anon_sym_total] = ACTIONS(161),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(161),
    [anon_sym_two_DASHray] = ACTIONS(161),
    [anon_sym_typical] = ACTIONS(161),
    [anon_sym_up] = ACTIONS(161),
    [anon_sym_vertical] = ACTIONS(161),
    [anon_sym_way] = ACTIONS(161),
    [anon_sym_wet] = ACTIONS(161),
    [anon_sym_wgs84] = ACTIONS(161),
    [anon_sym_with] = ACTIONS(161),
    [anon_sym_within] = ACTIONS(161),
    [anon_sym_yes] = ACTIONS(161),
    [anon_sym_COMMA] = ACTIONS(159),
    [anon_sym_EQ] = ACTIONS(159),
    [anon_sym_u00b1] = ACTIONS(159),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(159),
    [anon_sym_LPAREN] = ACTIONS(159),
    [anon_sym_DASH] = ACTIONS(161),
    [anon_sym_u2212] = ACTIONS(161),
    [anon_sym_u2013] = ACTIONS(161),
    [anon_sym_PLUS] = ACTIONS(161),
    [anon_sym_STAR] = ACTIONS(159),
    [anon_sym_SLASH] = ACTIONS(161),
    [anon_sym_CARET] = ACTIONS(159),
    [sym__glued] = ACTIONS(161),
    [sym_date] = ACTIONS(161),
    [sym_dms] = ACTIONS(159),
    [sym_number] = ACTIONS(161),
    [sym_digit_name] = ACTIONS(161),
    [sym_string] = ACTIONS(159),
    [sym_comment] = ACTIONS(3),
  },
  [21] = {
    [sym_coverage] = STATE(32),
    [ts_builtin_sym_end] = ACTIONS(163),
    [sym_name] = ACTIONS(165),
    [aux_sym__end_token1] = ACTIONS(163),
    [anon_sym_SEMI] = ACTIONS(163),
    [anon_sym_LBRACE] = ACTIONS(163),
    [anon_sym_RBRACE] = ACTIONS(163),
    [anon_sym_use] = ACTIONS(165),
    [anon_sym_band] = ACTIONS(165),
    [anon_sym_let] = ACTIONS(165),
    [anon_sym_cable] = ACTIONS(165),
    [anon_sym_connector] = ACTIONS(165),
    [anon_sym_device] = ACTIONS(165),
    [anon_sym_instrument] = ACTIONS(165),
    [anon_sym_session] = ACTIONS(165),
    [anon_sym_station] = ACTIONS(165),
    [anon_sym_chain] = ACTIONS(165),
    [anon_sym_licence] = ACTIONS(165),
    [anon_sym_rules] = ACTIONS(165),
    [anon_sym_link] = ACTIONS(165),
    [anon_sym_variant] = ACTIONS(165),
    [anon_sym_accept] = ACTIONS(165),
    [anon_sym_transmit] = ACTIONS(165),
    [anon_sym_receive] = ACTIONS(165),
    [anon_sym_impedance] = ACTIONS(165),
    [anon_sym_velocity] = ACTIONS(165),
    [anon_sym_loss] = ACTIONS(165),
    [anon_sym_construction] = ACTIONS(165),
    [anon_sym_wires] = ACTIONS(165),
    [anon_sym_valid] = ACTIONS(165),
    [anon_sym_accuracy] = ACTIONS(165),
    [anon_sym_rating] = ACTIONS(165),
    [anon_sym_voltage] = ACTIONS(165),
    [anon_sym_size] = ACTIONS(165),
    [anon_sym_conductor] = ACTIONS(165),
    [anon_sym_source] = ACTIONS(165),
    [anon_sym_recalled] = ACTIONS(165),
    [anon_sym_joins] = ACTIONS(165),
    [anon_sym_limit] = ACTIONS(165),
    [anon_sym_family] = ACTIONS(165),
    [anon_sym_bump] = ACTIONS(165),
    [anon_sym_return_DASHloss] = ACTIONS(165),
    [anon_sym_swr] = ACTIONS(165),
    [anon_sym_kind] = ACTIONS(165),
    [anon_sym_high] = ACTIONS(165),
    [anon_sym_low] = ACTIONS(165),
    [anon_sym_port] = ACTIONS(165),
    [anon_sym_from] = ACTIONS(165),
    [anon_sym_isolation] = ACTIONS(165),
    [anon_sym_ratio] = ACTIONS(165),
    [anon_sym_split] = ACTIONS(165),
    [anon_sym_tee] = ACTIONS(165),
    [anon_sym_reversed] = ACTIONS(165),
    [anon_sym_passes] = ACTIONS(165),
    [anon_sym_gain] = ACTIONS(165),
    [anon_sym_noise] = ACTIONS(165),
    [anon_sym_excess] = ACTIONS(165),
    [anon_sym_ways] = ACTIONS(165),
    [anon_sym_coupled] = ACTIONS(165),
    [anon_sym_calibrated] = ACTIONS(165),
    [anon_sym_scale] = ACTIONS(165),
    [anon_sym_resolution] = ACTIONS(165),
    [anon_sym_due] = ACTIONS(165),
    [anon_sym_linearity] = ACTIONS(165),
    [anon_sym_repeatability] = ACTIONS(165),
    [anon_sym_directivity] = ACTIONS(165),
    [anon_sym_certificate] = ACTIONS(165),
    [anon_sym_load] = ACTIONS(165),
    [anon_sym_read] = ACTIONS(165),
    [anon_sym_temperature] = ACTIONS(165),
    [anon_sym_generator] = ACTIONS(165),
    [anon_sym_drift] = ACTIONS(165),
    [anon_sym_piece] = ACTIONS(165),
    [anon_sym_readings] = ACTIONS(165),
    [anon_sym_resonance] = ACTIONS(165),
    [anon_sym_delay] = ACTIONS(165),
    [anon_sym_phase] = ACTIONS(165),
    [anon_sym_adapter] = ACTIONS(165),
    [anon_sym_position] = ACTIONS(165),
    [anon_sym_ground] = ACTIONS(165),
    [anon_sym_place] = ACTIONS(165),
    [anon_sym_under] = ACTIONS(165),
    [anon_sym_beside] = ACTIONS(165),
    [anon_sym_spot] = ACTIONS(165),
    [anon_sym_alone] = ACTIONS(165),
    [anon_sym_site_DASHnoise] = ACTIONS(165),
    [anon_sym_transmitter] = ACTIONS(165),
    [anon_sym_receiver] = ACTIONS(165),
    [anon_sym_transceiver] = ACTIONS(165),
    [anon_sym_run] = ACTIONS(165),
    [anon_sym_jumper] = ACTIONS(165),
    [anon_sym_tail] = ACTIONS(165),
    [anon_sym_pad] = ACTIONS(165),
    [anon_sym_filter] = ACTIONS(165),
    [anon_sym_isolator] = ACTIONS(165),
    [anon_sym_circulator] = ACTIONS(165),
    [anon_sym_protector] = ACTIONS(165),
    [anon_sym_switch] = ACTIONS(165),
    [anon_sym_coupler] = ACTIONS(165),
    [anon_sym_meter] = ACTIONS(165),
    [anon_sym_balun] = ACTIONS(165),
    [anon_sym_tuner] = ACTIONS(165),
    [anon_sym_duplexer] = ACTIONS(165),
    [anon_sym_diplexer] = ACTIONS(165),
    [anon_sym_combiner] = ACTIONS(165),
    [anon_sym_divider] = ACTIONS(165),
    [anon_sym_amplifier] = ACTIONS(165),
    [anon_sym_preamplifier] = ACTIONS(165),
    [anon_sym_antenna] = ACTIONS(165),
    [anon_sym_branches] = ACTIONS(165),
    [anon_sym_expect] = ACTIONS(165),
    [anon_sym_authority] = ACTIONS(165),
    [anon_sym_jurisdiction] = ACTIONS(165),
    [anon_sym_service] = ACTIONS(165),
    [anon_sym_edition] = ACTIONS(165),
    [anon_sym_dated] = ACTIONS(165),
    [anon_sym_until] = ACTIONS(165),
    [anon_sym_holder] = ACTIONS(165),
    [anon_sym_class] = ACTIONS(165),
    [anon_sym_ask] = ACTIONS(165),
    [anon_sym_threshold] = ACTIONS(165),
    [anon_sym_fixed] = ACTIONS(165),
    [anon_sym_condition] = ACTIONS(165),
    [anon_sym_reflection] = ACTIONS(165),
    [anon_sym_field] = ACTIONS(165),
    [anon_sym_hop] = ACTIONS(165),
    [anon_sym_profile] = ACTIONS(165),
    [anon_sym_distance] = ACTIONS(165),
    [anon_sym_k_DASHfactor] = ACTIONS(165),
    [anon_sym_need] = ACTIONS(165),
    [anon_sym_model] = ACTIONS(165),
    [anon_sym_coverage] = ACTIONS(165),
    [anon_sym_take] = ACTIONS(165),
    [anon_sym_put] = ACTIONS(165),
    [anon_sym_branch] = ACTIONS(165),
    [anon_sym_inner] = ACTIONS(165),
    [anon_sym_outer] = ACTIONS(165),
    [anon_sym_permittivity] = ACTIONS(165),
    [anon_sym_loss_DASHtangent] = ACTIONS(165),
    [anon_sym_strand] = ACTIONS(165),
    [anon_sym_strand_DASHdiameter] = ACTIONS(165),
    [anon_sym_braid] = ACTIONS(165),
    [anon_sym_resistivity] = ACTIONS(165),
    [anon_sym_inner_DASHresistivity] = ACTIONS(165),
    [anon_sym_outer_DASHresistivity] = ACTIONS(165),
    [anon_sym_diameter] = ACTIONS(165),
    [anon_sym_spacing] = ACTIONS(165),
    [anon_sym_baseline] = ACTIONS(165),
    [anon_sym_through] = ACTIONS(165),
    [anon_sym_open] = ACTIONS(165),
    [anon_sym_short] = ACTIONS(165),
    [anon_sym_equalise] = ACTIONS(165),
    [anon_sym_power] = ACTIONS(165),
    [anon_sym_mode] = ACTIONS(165),
    [anon_sym_duty] = ACTIONS(165),
    [anon_sym_keyed] = ACTIONS(165),
    [anon_sym_foldback] = ACTIONS(165),
    [anon_sym_bandwidth] = ACTIONS(165),
    [anon_sym_sensitivity] = ACTIONS(165),
    [anon_sym_blocking] = ACTIONS(165),
    [anon_sym_efficiency] = ACTIONS(165),
    [anon_sym_height] = ACTIONS(165),
    [anon_sym_pattern] = ACTIONS(165),
    [anon_sym_haat] = ACTIONS(165),
    [anon_sym_radius] = ACTIONS(165),
    [anon_sym_fails] = ACTIONS(165),
    [anon_sym_GHz] = ACTIONS(165),
    [anon_sym_Hz] = ACTIONS(165),
    [anon_sym_MHz] = ACTIONS(165),
    [anon_sym_above] = ACTIONS(165),
    [anon_sym_added] = ACTIONS(165),
    [anon_sym_after] = ACTIONS(165),
    [anon_sym_against] = ACTIONS(165),
    [anon_sym_agl] = ACTIONS(165),
    [anon_sym_allocated] = ACTIONS(165),
    [anon_sym_am] = ACTIONS(165),
    [anon_sym_ambient] = ACTIONS(165),
    [anon_sym_amsl] = ACTIONS(165),
    [anon_sym_apart] = ACTIONS(165),
    [anon_sym_at] = ACTIONS(165),
    [anon_sym_averaging] = ACTIONS(165),
    [anon_sym_below] = ACTIONS(165),
    [anon_sym_beyond] = ACTIONS(165),
    [anon_sym_blank] = ACTIONS(165),
    [anon_sym_bow] = ACTIONS(165),
    [anon_sym_bullington] = ACTIONS(165),
    [anon_sym_by] = ACTIONS(165),
    [anon_sym_carrier] = ACTIONS(165),
    [anon_sym_cascade] = ACTIONS(165),
    [anon_sym_city] = ACTIONS(165),
    [anon_sym_clad] = ACTIONS(165),
    [anon_sym_confidence] = ACTIONS(165),
    [anon_sym_corrected] = ACTIONS(165),
    [anon_sym_cw] = ACTIONS(165),
    [anon_sym_dB] = ACTIONS(165),
    [anon_sym_dBW] = ACTIONS(165),
    [anon_sym_dBd] = ACTIONS(165),
    [anon_sym_dBi] = ACTIONS(165),
    [anon_sym_dBm] = ACTIONS(165),
    [anon_sym_data] = ACTIONS(165),
    [anon_sym_date] = ACTIONS(165),
    [anon_sym_datum] = ACTIONS(165),
    [anon_sym_dc_DASHinput] = ACTIONS(165),
    [anon_sym_degrees] = ACTIONS(165),
    [anon_sym_delivered] = ACTIONS(165),
    [anon_sym_desense] = ACTIONS(165),
    [anon_sym_displayed] = ACTIONS(165),
    [anon_sym_dms] = ACTIONS(165),
    [anon_sym_down] = ACTIONS(165),
    [anon_sym_eirp] = ACTIONS(165),
    [anon_sym_elevation] = ACTIONS(165),
    [anon_sym_ends] = ACTIONS(165),
    [anon_sym_erp] = ACTIONS(165),
    [anon_sym_etrs89] = ACTIONS(165),
    [anon_sym_figure] = ACTIONS(165),
    [anon_sym_fm] = ACTIONS(165),
    [anon_sym_for] = ACTIONS(165),
    [anon_sym_forward] = ACTIONS(165),
    [anon_sym_free_DASHspace] = ACTIONS(165),
    [anon_sym_frequency] = ACTIONS(165),
    [anon_sym_ft] = ACTIONS(165),
    [anon_sym_full] = ACTIONS(165),
    [anon_sym_guess] = ACTIONS(165),
    [anon_sym_hata_DASHopen] = ACTIONS(165),
    [anon_sym_hata_DASHsuburban] = ACTIONS(165),
    [anon_sym_hata_DASHurban] = ACTIONS(165),
    [anon_sym_height_DASHamsl] = ACTIONS(165),
    [anon_sym_horizontal] = ACTIONS(165),
    [anon_sym_if] = ACTIONS(165),
    [anon_sym_in] = ACTIONS(165),
    [anon_sym_input] = ACTIONS(165),
    [anon_sym_instead] = ACTIONS(165),
    [anon_sym_k] = ACTIONS(119),
    [anon_sym_kHz] = ACTIONS(165),
    [anon_sym_kW] = ACTIONS(165),
    [anon_sym_km] = ACTIONS(165),
    [anon_sym_latitude] = ACTIONS(165),
    [anon_sym_longitude] = ACTIONS(165),
    [anon_sym_m] = ACTIONS(165),
    [anon_sym_mW] = ACTIONS(165),
    [anon_sym_maximum] = ACTIONS(165),
    [anon_sym_mean] = ACTIONS(165),
    [anon_sym_medium] = ACTIONS(165),
    [anon_sym_nad27] = ACTIONS(165),
    [anon_sym_nad83] = ACTIONS(165),
    [anon_sym_net] = ACTIONS(165),
    [anon_sym_no] = ACTIONS(165),
    [anon_sym_nominal] = ACTIONS(165),
    [anon_sym_occupational] = ACTIONS(165),
    [anon_sym_of] = ACTIONS(165),
    [anon_sym_offset] = ACTIONS(165),
    [anon_sym_on] = ACTIONS(165),
    [anon_sym_one_DASHedge] = ACTIONS(165),
    [anon_sym_out] = ACTIONS(165),
    [anon_sym_output] = ACTIONS(165),
    [anon_sym_over] = ACTIONS(165),
    [anon_sym_pep] = ACTIONS(165),
    [anon_sym_per] = ACTIONS(165),
    [anon_sym_places] = ACTIONS(165),
    [anon_sym_public] = ACTIONS(165),
    [anon_sym_quiet_DASHrural] = ACTIONS(165),
    [anon_sym_quieting] = ACTIONS(165),
    [anon_sym_rated] = ACTIONS(165),
    [anon_sym_reactance] = ACTIONS(165),
    [anon_sym_reading] = ACTIONS(165),
    [anon_sym_realized] = ACTIONS(165),
    [anon_sym_receive_DASHfrequency] = ACTIONS(165),
    [anon_sym_receive_DASHloss] = ACTIONS(165),
    [anon_sym_reference] = ACTIONS(165),
    [anon_sym_reflected] = ACTIONS(165),
    [anon_sym_rejects] = ACTIONS(165),
    [anon_sym_residential] = ACTIONS(165),
    [anon_sym_rural] = ACTIONS(165),
    [anon_sym_series] = ACTIONS(165),
    [anon_sym_shared] = ACTIONS(165),
    [anon_sym_sheet] = ACTIONS(165),
    [anon_sym_shunt] = ACTIONS(165),
    [anon_sym_sinad] = ACTIONS(165),
    [anon_sym_since] = ACTIONS(165),
    [anon_sym_snr] = ACTIONS(165),
    [anon_sym_spread] = ACTIONS(165),
    [anon_sym_ssb] = ACTIONS(165),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(165),
    [anon_sym_then] = ACTIONS(165),
    [anon_sym_title] = ACTIONS(165),
    [anon_sym_to] = ACTIONS(165),
    [anon_sym_total] = ACTIONS(165),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(165),
    [anon_sym_two_DASHray] = ACTIONS(165),
    [anon_sym_typical] = ACTIONS(165),
    [anon_sym_up] = ACTIONS(165),
    [anon_sym_vertical] = ACTIONS(165),
    [anon_sym_way] = ACTIONS(165),
    [anon_sym_wet] = ACTIONS(165),
    [anon_sym_wgs84] = ACTIONS(165),
    [anon_sym_with] = ACTIONS(165),
    [anon_sym_within] = ACTIONS(165),
    [anon_sym_yes] = ACTIONS(165),
    [anon_sym_COMMA] = ACTIONS(163),
    [anon_sym_EQ] = ACTIONS(163),
    [anon_sym_LPAREN] = ACTIONS(163),
    [anon_sym_DASH] = ACTIONS(167),
    [anon_sym_u2212] = ACTIONS(167),
    [anon_sym_u2013] = ACTIONS(167),
    [anon_sym_PLUS] = ACTIONS(167),
    [anon_sym_STAR] = ACTIONS(169),
    [anon_sym_SLASH] = ACTIONS(167),
    [anon_sym_CARET] = ACTIONS(169),
    [sym__glued] = ACTIONS(165),
    [sym_date] = ACTIONS(165),
    [sym_dms] = ACTIONS(163),
    [sym_number] = ACTIONS(165),
    [sym_digit_name] = ACTIONS(165),
    [sym_string] = ACTIONS(163),
    [sym_comment] = ACTIONS(3),
  },
  [22] = {
    [ts_builtin_sym_end] = ACTIONS(171),
    [sym_name] = ACTIONS(173),
    [aux_sym__end_token1] = ACTIONS(171),
    [anon_sym_SEMI] = ACTIONS(171),
    [anon_sym_LBRACE] = ACTIONS(171),
    [anon_sym_RBRACE] = ACTIONS(171),
    [anon_sym_use] = ACTIONS(173),
    [anon_sym_band] = ACTIONS(173),
    [anon_sym_let] = ACTIONS(173),
    [anon_sym_cable] = ACTIONS(173),
    [anon_sym_connector] = ACTIONS(173),
    [anon_sym_device] = ACTIONS(173),
    [anon_sym_instrument] = ACTIONS(173),
    [anon_sym_session] = ACTIONS(173),
    [anon_sym_station] = ACTIONS(173),
    [anon_sym_chain] = ACTIONS(173),
    [anon_sym_licence] = ACTIONS(173),
    [anon_sym_rules] = ACTIONS(173),
    [anon_sym_link] = ACTIONS(173),
    [anon_sym_variant] = ACTIONS(173),
    [anon_sym_accept] = ACTIONS(173),
    [anon_sym_transmit] = ACTIONS(173),
    [anon_sym_receive] = ACTIONS(173),
    [anon_sym_impedance] = ACTIONS(173),
    [anon_sym_velocity] = ACTIONS(173),
    [anon_sym_loss] = ACTIONS(173),
    [anon_sym_construction] = ACTIONS(173),
    [anon_sym_wires] = ACTIONS(173),
    [anon_sym_valid] = ACTIONS(173),
    [anon_sym_accuracy] = ACTIONS(173),
    [anon_sym_rating] = ACTIONS(173),
    [anon_sym_voltage] = ACTIONS(173),
    [anon_sym_size] = ACTIONS(173),
    [anon_sym_conductor] = ACTIONS(173),
    [anon_sym_source] = ACTIONS(173),
    [anon_sym_recalled] = ACTIONS(173),
    [anon_sym_joins] = ACTIONS(173),
    [anon_sym_limit] = ACTIONS(173),
    [anon_sym_family] = ACTIONS(173),
    [anon_sym_bump] = ACTIONS(173),
    [anon_sym_return_DASHloss] = ACTIONS(173),
    [anon_sym_swr] = ACTIONS(173),
    [anon_sym_kind] = ACTIONS(173),
    [anon_sym_high] = ACTIONS(173),
    [anon_sym_low] = ACTIONS(173),
    [anon_sym_port] = ACTIONS(173),
    [anon_sym_from] = ACTIONS(173),
    [anon_sym_isolation] = ACTIONS(173),
    [anon_sym_ratio] = ACTIONS(173),
    [anon_sym_split] = ACTIONS(173),
    [anon_sym_tee] = ACTIONS(173),
    [anon_sym_reversed] = ACTIONS(173),
    [anon_sym_passes] = ACTIONS(173),
    [anon_sym_gain] = ACTIONS(173),
    [anon_sym_noise] = ACTIONS(173),
    [anon_sym_excess] = ACTIONS(173),
    [anon_sym_ways] = ACTIONS(173),
    [anon_sym_coupled] = ACTIONS(173),
    [anon_sym_calibrated] = ACTIONS(173),
    [anon_sym_scale] = ACTIONS(173),
    [anon_sym_resolution] = ACTIONS(173),
    [anon_sym_due] = ACTIONS(173),
    [anon_sym_linearity] = ACTIONS(173),
    [anon_sym_repeatability] = ACTIONS(173),
    [anon_sym_directivity] = ACTIONS(173),
    [anon_sym_certificate] = ACTIONS(173),
    [anon_sym_load] = ACTIONS(173),
    [anon_sym_read] = ACTIONS(173),
    [anon_sym_temperature] = ACTIONS(173),
    [anon_sym_generator] = ACTIONS(173),
    [anon_sym_drift] = ACTIONS(173),
    [anon_sym_piece] = ACTIONS(173),
    [anon_sym_readings] = ACTIONS(173),
    [anon_sym_resonance] = ACTIONS(173),
    [anon_sym_delay] = ACTIONS(173),
    [anon_sym_phase] = ACTIONS(173),
    [anon_sym_adapter] = ACTIONS(173),
    [anon_sym_position] = ACTIONS(173),
    [anon_sym_ground] = ACTIONS(173),
    [anon_sym_place] = ACTIONS(173),
    [anon_sym_under] = ACTIONS(173),
    [anon_sym_beside] = ACTIONS(173),
    [anon_sym_spot] = ACTIONS(173),
    [anon_sym_alone] = ACTIONS(173),
    [anon_sym_site_DASHnoise] = ACTIONS(173),
    [anon_sym_transmitter] = ACTIONS(173),
    [anon_sym_receiver] = ACTIONS(173),
    [anon_sym_transceiver] = ACTIONS(173),
    [anon_sym_run] = ACTIONS(173),
    [anon_sym_jumper] = ACTIONS(173),
    [anon_sym_tail] = ACTIONS(173),
    [anon_sym_pad] = ACTIONS(173),
    [anon_sym_filter] = ACTIONS(173),
    [anon_sym_isolator] = ACTIONS(173),
    [anon_sym_circulator] = ACTIONS(173),
    [anon_sym_protector] = ACTIONS(173),
    [anon_sym_switch] = ACTIONS(173),
    [anon_sym_coupler] = ACTIONS(173),
    [anon_sym_meter] = ACTIONS(173),
    [anon_sym_balun] = ACTIONS(173),
    [anon_sym_tuner] = ACTIONS(173),
    [anon_sym_duplexer] = ACTIONS(173),
    [anon_sym_diplexer] = ACTIONS(173),
    [anon_sym_combiner] = ACTIONS(173),
    [anon_sym_divider] = ACTIONS(173),
    [anon_sym_amplifier] = ACTIONS(173),
    [anon_sym_preamplifier] = ACTIONS(173),
    [anon_sym_antenna] = ACTIONS(173),
    [anon_sym_branches] = ACTIONS(173),
    [anon_sym_expect] = ACTIONS(173),
    [anon_sym_authority] = ACTIONS(173),
    [anon_sym_jurisdiction] = ACTIONS(173),
    [anon_sym_service] = ACTIONS(173),
    [anon_sym_edition] = ACTIONS(173),
    [anon_sym_dated] = ACTIONS(173),
    [anon_sym_until] = ACTIONS(173),
    [anon_sym_holder] = ACTIONS(173),
    [anon_sym_class] = ACTIONS(173),
    [anon_sym_ask] = ACTIONS(173),
    [anon_sym_threshold] = ACTIONS(173),
    [anon_sym_fixed] = ACTIONS(173),
    [anon_sym_condition] = ACTIONS(173),
    [anon_sym_reflection] = ACTIONS(173),
    [anon_sym_field] = ACTIONS(173),
    [anon_sym_hop] = ACTIONS(173),
    [anon_sym_profile] = ACTIONS(173),
    [anon_sym_distance] = ACTIONS(173),
    [anon_sym_k_DASHfactor] = ACTIONS(173),
    [anon_sym_need] = ACTIONS(173),
    [anon_sym_model] = ACTIONS(173),
    [anon_sym_coverage] = ACTIONS(173),
    [anon_sym_take] = ACTIONS(173),
    [anon_sym_put] = ACTIONS(173),
    [anon_sym_branch] = ACTIONS(173),
    [anon_sym_inner] = ACTIONS(173),
    [anon_sym_outer] = ACTIONS(173),
    [anon_sym_permittivity] = ACTIONS(173),
    [anon_sym_loss_DASHtangent] = ACTIONS(173),
    [anon_sym_strand] = ACTIONS(173),
    [anon_sym_strand_DASHdiameter] = ACTIONS(173),
    [anon_sym_braid] = ACTIONS(173),
    [anon_sym_resistivity] = ACTIONS(173),
    [anon_sym_inner_DASHresistivity] = ACTIONS(173),
    [anon_sym_outer_DASHresistivity] = ACTIONS(173),
    [anon_sym_diameter] = ACTIONS(173),
    [anon_sym_spacing] = ACTIONS(173),
    [anon_sym_baseline] = ACTIONS(173),
    [anon_sym_through] = ACTIONS(173),
    [anon_sym_open] = ACTIONS(173),
    [anon_sym_short] = ACTIONS(173),
    [anon_sym_equalise] = ACTIONS(173),
    [anon_sym_power] = ACTIONS(173),
    [anon_sym_mode] = ACTIONS(173),
    [anon_sym_duty] = ACTIONS(173),
    [anon_sym_keyed] = ACTIONS(173),
    [anon_sym_foldback] = ACTIONS(173),
    [anon_sym_bandwidth] = ACTIONS(173),
    [anon_sym_sensitivity] = ACTIONS(173),
    [anon_sym_blocking] = ACTIONS(173),
    [anon_sym_efficiency] = ACTIONS(173),
    [anon_sym_height] = ACTIONS(173),
    [anon_sym_pattern] = ACTIONS(173),
    [anon_sym_haat] = ACTIONS(173),
    [anon_sym_radius] = ACTIONS(173),
    [anon_sym_fails] = ACTIONS(173),
    [anon_sym_GHz] = ACTIONS(173),
    [anon_sym_Hz] = ACTIONS(173),
    [anon_sym_MHz] = ACTIONS(173),
    [anon_sym_above] = ACTIONS(173),
    [anon_sym_added] = ACTIONS(173),
    [anon_sym_after] = ACTIONS(173),
    [anon_sym_against] = ACTIONS(173),
    [anon_sym_agl] = ACTIONS(173),
    [anon_sym_allocated] = ACTIONS(173),
    [anon_sym_am] = ACTIONS(173),
    [anon_sym_ambient] = ACTIONS(173),
    [anon_sym_amsl] = ACTIONS(173),
    [anon_sym_apart] = ACTIONS(173),
    [anon_sym_at] = ACTIONS(173),
    [anon_sym_averaging] = ACTIONS(173),
    [anon_sym_below] = ACTIONS(173),
    [anon_sym_beyond] = ACTIONS(173),
    [anon_sym_blank] = ACTIONS(173),
    [anon_sym_bow] = ACTIONS(173),
    [anon_sym_bullington] = ACTIONS(173),
    [anon_sym_by] = ACTIONS(173),
    [anon_sym_carrier] = ACTIONS(173),
    [anon_sym_cascade] = ACTIONS(173),
    [anon_sym_city] = ACTIONS(173),
    [anon_sym_clad] = ACTIONS(173),
    [anon_sym_confidence] = ACTIONS(173),
    [anon_sym_corrected] = ACTIONS(173),
    [anon_sym_cw] = ACTIONS(173),
    [anon_sym_dB] = ACTIONS(173),
    [anon_sym_dBW] = ACTIONS(173),
    [anon_sym_dBd] = ACTIONS(173),
    [anon_sym_dBi] = ACTIONS(173),
    [anon_sym_dBm] = ACTIONS(173),
    [anon_sym_data] = ACTIONS(173),
    [anon_sym_date] = ACTIONS(173),
    [anon_sym_datum] = ACTIONS(173),
    [anon_sym_dc_DASHinput] = ACTIONS(173),
    [anon_sym_degrees] = ACTIONS(173),
    [anon_sym_delivered] = ACTIONS(173),
    [anon_sym_desense] = ACTIONS(173),
    [anon_sym_displayed] = ACTIONS(173),
    [anon_sym_dms] = ACTIONS(173),
    [anon_sym_down] = ACTIONS(173),
    [anon_sym_eirp] = ACTIONS(173),
    [anon_sym_elevation] = ACTIONS(173),
    [anon_sym_ends] = ACTIONS(173),
    [anon_sym_erp] = ACTIONS(173),
    [anon_sym_etrs89] = ACTIONS(173),
    [anon_sym_figure] = ACTIONS(173),
    [anon_sym_fm] = ACTIONS(173),
    [anon_sym_for] = ACTIONS(173),
    [anon_sym_forward] = ACTIONS(173),
    [anon_sym_free_DASHspace] = ACTIONS(173),
    [anon_sym_frequency] = ACTIONS(173),
    [anon_sym_ft] = ACTIONS(173),
    [anon_sym_full] = ACTIONS(173),
    [anon_sym_guess] = ACTIONS(173),
    [anon_sym_hata_DASHopen] = ACTIONS(173),
    [anon_sym_hata_DASHsuburban] = ACTIONS(173),
    [anon_sym_hata_DASHurban] = ACTIONS(173),
    [anon_sym_height_DASHamsl] = ACTIONS(173),
    [anon_sym_horizontal] = ACTIONS(173),
    [anon_sym_if] = ACTIONS(173),
    [anon_sym_in] = ACTIONS(173),
    [anon_sym_input] = ACTIONS(173),
    [anon_sym_instead] = ACTIONS(173),
    [anon_sym_k] = ACTIONS(173),
    [anon_sym_kHz] = ACTIONS(173),
    [anon_sym_kW] = ACTIONS(173),
    [anon_sym_km] = ACTIONS(173),
    [anon_sym_latitude] = ACTIONS(173),
    [anon_sym_longitude] = ACTIONS(173),
    [anon_sym_m] = ACTIONS(173),
    [anon_sym_mW] = ACTIONS(173),
    [anon_sym_maximum] = ACTIONS(173),
    [anon_sym_mean] = ACTIONS(173),
    [anon_sym_medium] = ACTIONS(173),
    [anon_sym_nad27] = ACTIONS(173),
    [anon_sym_nad83] = ACTIONS(173),
    [anon_sym_net] = ACTIONS(173),
    [anon_sym_no] = ACTIONS(173),
    [anon_sym_nominal] = ACTIONS(173),
    [anon_sym_occupational] = ACTIONS(173),
    [anon_sym_of] = ACTIONS(173),
    [anon_sym_offset] = ACTIONS(173),
    [anon_sym_on] = ACTIONS(173),
    [anon_sym_one_DASHedge] = ACTIONS(173),
    [anon_sym_out] = ACTIONS(173),
    [anon_sym_output] = ACTIONS(173),
    [anon_sym_over] = ACTIONS(173),
    [anon_sym_pep] = ACTIONS(173),
    [anon_sym_per] = ACTIONS(173),
    [anon_sym_places] = ACTIONS(173),
    [anon_sym_public] = ACTIONS(173),
    [anon_sym_quiet_DASHrural] = ACTIONS(173),
    [anon_sym_quieting] = ACTIONS(173),
    [anon_sym_rated] = ACTIONS(173),
    [anon_sym_reactance] = ACTIONS(173),
    [anon_sym_reading] = ACTIONS(173),
    [anon_sym_realized] = ACTIONS(173),
    [anon_sym_receive_DASHfrequency] = ACTIONS(173),
    [anon_sym_receive_DASHloss] = ACTIONS(173),
    [anon_sym_reference] = ACTIONS(173),
    [anon_sym_reflected] = ACTIONS(173),
    [anon_sym_rejects] = ACTIONS(173),
    [anon_sym_residential] = ACTIONS(173),
    [anon_sym_rural] = ACTIONS(173),
    [anon_sym_series] = ACTIONS(173),
    [anon_sym_shared] = ACTIONS(173),
    [anon_sym_sheet] = ACTIONS(173),
    [anon_sym_shunt] = ACTIONS(173),
    [anon_sym_sinad] = ACTIONS(173),
    [anon_sym_since] = ACTIONS(173),
    [anon_sym_snr] = ACTIONS(173),
    [anon_sym_spread] = ACTIONS(173),
    [anon_sym_ssb] = ACTIONS(173),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(173),
    [anon_sym_then] = ACTIONS(173),
    [anon_sym_title] = ACTIONS(173),
    [anon_sym_to] = ACTIONS(173),
    [anon_sym_total] = ACTIONS(173),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(173),
    [anon_sym_two_DASHray] = ACTIONS(173),
    [anon_sym_typical] = ACTIONS(173),
    [anon_sym_up] = ACTIONS(173),
    [anon_sym_vertical] = ACTIONS(173),
    [anon_sym_way] = ACTIONS(173),
    [anon_sym_wet] = ACTIONS(173),
    [anon_sym_wgs84] = ACTIONS(173),
    [anon_sym_with] = ACTIONS(173),
    [anon_sym_within] = ACTIONS(173),
    [anon_sym_yes] = ACTIONS(173),
    [anon_sym_COMMA] = ACTIONS(171),
    [anon_sym_EQ] = ACTIONS(171),
    [anon_sym_LPAREN] = ACTIONS(171),
    [anon_sym_DASH] = ACTIONS(167),
    [anon_sym_u2212] = ACTIONS(167),
    [anon_sym_u2013] = ACTIONS(167),
    [anon_sym_PLUS] = ACTIONS(167),
    [anon_sym_STAR] = ACTIONS(169),
    [anon_sym_SLASH] = ACTIONS(167),
    [anon_sym_CARET] = ACTIONS(169),
    [sym__glued] = ACTIONS(173),
    [sym_date] = ACTIONS(173),
    [sym_dms] = ACTIONS(171),
    [sym_number] = ACTIONS(173),
    [sym_digit_name] = ACTIONS(173),
    [sym_string] = ACTIONS(171),
    [sym_comment] = ACTIONS(3),
  },
  [23] = {
    [ts_builtin_sym_end] = ACTIONS(155),
    [sym_name] = ACTIONS(157),
    [aux_sym__end_token1] = ACTIONS(155),
    [anon_sym_SEMI] = ACTIONS(155),
    [anon_sym_LBRACE] = ACTIONS(155),
    [anon_sym_RBRACE] = ACTIONS(155),
    [anon_sym_use] = ACTIONS(157),
    [anon_sym_band] = ACTIONS(157),
    [anon_sym_let] = ACTIONS(157),
    [anon_sym_cable] = ACTIONS(157),
    [anon_sym_connector] = ACTIONS(157),
    [anon_sym_device] = ACTIONS(157),
    [anon_sym_instrument] = ACTIONS(157),
    [anon_sym_session] = ACTIONS(157),
    [anon_sym_station] = ACTIONS(157),
    [anon_sym_chain] = ACTIONS(157),
    [anon_sym_licence] = ACTIONS(157),
    [anon_sym_rules] = ACTIONS(157),
    [anon_sym_link] = ACTIONS(157),
    [anon_sym_variant] = ACTIONS(157),
    [anon_sym_accept] = ACTIONS(157),
    [anon_sym_transmit] = ACTIONS(157),
    [anon_sym_receive] = ACTIONS(157),
    [anon_sym_impedance] = ACTIONS(157),
    [anon_sym_velocity] = ACTIONS(157),
    [anon_sym_loss] = ACTIONS(157),
    [anon_sym_construction] = ACTIONS(157),
    [anon_sym_wires] = ACTIONS(157),
    [anon_sym_valid] = ACTIONS(157),
    [anon_sym_accuracy] = ACTIONS(157),
    [anon_sym_rating] = ACTIONS(157),
    [anon_sym_voltage] = ACTIONS(157),
    [anon_sym_size] = ACTIONS(157),
    [anon_sym_conductor] = ACTIONS(157),
    [anon_sym_source] = ACTIONS(157),
    [anon_sym_recalled] = ACTIONS(157),
    [anon_sym_joins] = ACTIONS(157),
    [anon_sym_limit] = ACTIONS(157),
    [anon_sym_family] = ACTIONS(157),
    [anon_sym_bump] = ACTIONS(157),
    [anon_sym_return_DASHloss] = ACTIONS(157),
    [anon_sym_swr] = ACTIONS(157),
    [anon_sym_kind] = ACTIONS(157),
    [anon_sym_high] = ACTIONS(157),
    [anon_sym_low] = ACTIONS(157),
    [anon_sym_port] = ACTIONS(157),
    [anon_sym_from] = ACTIONS(157),
    [anon_sym_isolation] = ACTIONS(157),
    [anon_sym_ratio] = ACTIONS(157),
    [anon_sym_split] = ACTIONS(157),
    [anon_sym_tee] = ACTIONS(157),
    [anon_sym_reversed] = ACTIONS(157),
    [anon_sym_passes] = ACTIONS(157),
    [anon_sym_gain] = ACTIONS(157),
    [anon_sym_noise] = ACTIONS(157),
    [anon_sym_excess] = ACTIONS(157),
    [anon_sym_ways] = ACTIONS(157),
    [anon_sym_coupled] = ACTIONS(157),
    [anon_sym_calibrated] = ACTIONS(157),
    [anon_sym_scale] = ACTIONS(157),
    [anon_sym_resolution] = ACTIONS(157),
    [anon_sym_due] = ACTIONS(157),
    [anon_sym_linearity] = ACTIONS(157),
    [anon_sym_repeatability] = ACTIONS(157),
    [anon_sym_directivity] = ACTIONS(157),
    [anon_sym_certificate] = ACTIONS(157),
    [anon_sym_load] = ACTIONS(157),
    [anon_sym_read] = ACTIONS(157),
    [anon_sym_temperature] = ACTIONS(157),
    [anon_sym_generator] = ACTIONS(157),
    [anon_sym_drift] = ACTIONS(157),
    [anon_sym_piece] = ACTIONS(157),
    [anon_sym_readings] = ACTIONS(157),
    [anon_sym_resonance] = ACTIONS(157),
    [anon_sym_delay] = ACTIONS(157),
    [anon_sym_phase] = ACTIONS(157),
    [anon_sym_adapter] = ACTIONS(157),
    [anon_sym_position] = ACTIONS(157),
    [anon_sym_ground] = ACTIONS(157),
    [anon_sym_place] = ACTIONS(157),
    [anon_sym_under] = ACTIONS(157),
    [anon_sym_beside] = ACTIONS(157),
    [anon_sym_spot] = ACTIONS(157),
    [anon_sym_alone] = ACTIONS(157),
    [anon_sym_site_DASHnoise] = ACTIONS(157),
    [anon_sym_transmitter] = ACTIONS(157),
    [anon_sym_receiver] = ACTIONS(157),
    [anon_sym_transceiver] = ACTIONS(157),
    [anon_sym_run] = ACTIONS(157),
    [anon_sym_jumper] = ACTIONS(157),
    [anon_sym_tail] = ACTIONS(157),
    [anon_sym_pad] = ACTIONS(157),
    [anon_sym_filter] = ACTIONS(157),
    [anon_sym_isolator] = ACTIONS(157),
    [anon_sym_circulator] = ACTIONS(157),
    [anon_sym_protector] = ACTIONS(157),
    [anon_sym_switch] = ACTIONS(157),
    [anon_sym_coupler] = ACTIONS(157),
    [anon_sym_meter] = ACTIONS(157),
    [anon_sym_balun] = ACTIONS(157),
    [anon_sym_tuner] = ACTIONS(157),
    [anon_sym_duplexer] = ACTIONS(157),
    [anon_sym_diplexer] = ACTIONS(157),
    [anon_sym_combiner] = ACTIONS(157),
    [anon_sym_divider] = ACTIONS(157),
    [anon_sym_amplifier] = ACTIONS(157),
    [anon_sym_preamplifier] = ACTIONS(157),
    [anon_sym_antenna] = ACTIONS(157),
    [anon_sym_branches] = ACTIONS(157),
    [anon_sym_expect] = ACTIONS(157),
    [anon_sym_authority] = ACTIONS(157),
    [anon_sym_jurisdiction] = ACTIONS(157),
    [anon_sym_service] = ACTIONS(157),
    [anon_sym_edition] = ACTIONS(157),
    [anon_sym_dated] = ACTIONS(157),
    [anon_sym_until] = ACTIONS(157),
    [anon_sym_holder] = ACTIONS(157),
    [anon_sym_class] = ACTIONS(157),
    [anon_sym_ask] = ACTIONS(157),
    [anon_sym_threshold] = ACTIONS(157),
    [anon_sym_fixed] = ACTIONS(157),
    [anon_sym_condition] = ACTIONS(157),
    [anon_sym_reflection] = ACTIONS(157),
    [anon_sym_field] = ACTIONS(157),
    [anon_sym_hop] = ACTIONS(157),
    [anon_sym_profile] = ACTIONS(157),
    [anon_sym_distance] = ACTIONS(157),
    [anon_sym_k_DASHfactor] = ACTIONS(157),
    [anon_sym_need] = ACTIONS(157),
    [anon_sym_model] = ACTIONS(157),
    [anon_sym_coverage] = ACTIONS(157),
    [anon_sym_take] = ACTIONS(157),
    [anon_sym_put] = ACTIONS(157),
    [anon_sym_branch] = ACTIONS(157),
    [anon_sym_inner] = ACTIONS(157),
    [anon_sym_outer] = ACTIONS(157),
    [anon_sym_permittivity] = ACTIONS(157),
    [anon_sym_loss_DASHtangent] = ACTIONS(157),
    [anon_sym_strand] = ACTIONS(157),
    [anon_sym_strand_DASHdiameter] = ACTIONS(157),
    [anon_sym_braid] = ACTIONS(157),
    [anon_sym_resistivity] = ACTIONS(157),
    [anon_sym_inner_DASHresistivity] = ACTIONS(157),
    [anon_sym_outer_DASHresistivity] = ACTIONS(157),
    [anon_sym_diameter] = ACTIONS(157),
    [anon_sym_spacing] = ACTIONS(157),
    [anon_sym_baseline] = ACTIONS(157),
    [anon_sym_through] = ACTIONS(157),
    [anon_sym_open] = ACTIONS(157),
    [anon_sym_short] = ACTIONS(157),
    [anon_sym_equalise] = ACTIONS(157),
    [anon_sym_power] = ACTIONS(157),
    [anon_sym_mode] = ACTIONS(157),
    [anon_sym_duty] = ACTIONS(157),
    [anon_sym_keyed] = ACTIONS(157),
    [anon_sym_foldback] = ACTIONS(157),
    [anon_sym_bandwidth] = ACTIONS(157),
    [anon_sym_sensitivity] = ACTIONS(157),
    [anon_sym_blocking] = ACTIONS(157),
    [anon_sym_efficiency] = ACTIONS(157),
    [anon_sym_height] = ACTIONS(157),
    [anon_sym_pattern] = ACTIONS(157),
    [anon_sym_haat] = ACTIONS(157),
    [anon_sym_radius] = ACTIONS(157),
    [anon_sym_fails] = ACTIONS(157),
    [anon_sym_GHz] = ACTIONS(157),
    [anon_sym_Hz] = ACTIONS(157),
    [anon_sym_MHz] = ACTIONS(157),
    [anon_sym_above] = ACTIONS(157),
    [anon_sym_added] = ACTIONS(157),
    [anon_sym_after] = ACTIONS(157),
    [anon_sym_against] = ACTIONS(157),
    [anon_sym_agl] = ACTIONS(157),
    [anon_sym_allocated] = ACTIONS(157),
    [anon_sym_am] = ACTIONS(157),
    [anon_sym_ambient] = ACTIONS(157),
    [anon_sym_amsl] = ACTIONS(157),
    [anon_sym_apart] = ACTIONS(157),
    [anon_sym_at] = ACTIONS(157),
    [anon_sym_averaging] = ACTIONS(157),
    [anon_sym_below] = ACTIONS(157),
    [anon_sym_beyond] = ACTIONS(157),
    [anon_sym_blank] = ACTIONS(157),
    [anon_sym_bow] = ACTIONS(157),
    [anon_sym_bullington] = ACTIONS(157),
    [anon_sym_by] = ACTIONS(157),
    [anon_sym_carrier] = ACTIONS(157),
    [anon_sym_cascade] = ACTIONS(157),
    [anon_sym_city] = ACTIONS(157),
    [anon_sym_clad] = ACTIONS(157),
    [anon_sym_confidence] = ACTIONS(157),
    [anon_sym_corrected] = ACTIONS(157),
    [anon_sym_cw] = ACTIONS(157),
    [anon_sym_dB] = ACTIONS(157),
    [anon_sym_dBW] = ACTIONS(157),
    [anon_sym_dBd] = ACTIONS(157),
    [anon_sym_dBi] = ACTIONS(157),
    [anon_sym_dBm] = ACTIONS(157),
    [anon_sym_data] = ACTIONS(157),
    [anon_sym_date] = ACTIONS(157),
    [anon_sym_datum] = ACTIONS(157),
    [anon_sym_dc_DASHinput] = ACTIONS(157),
    [anon_sym_degrees] = ACTIONS(157),
    [anon_sym_delivered] = ACTIONS(157),
    [anon_sym_desense] = ACTIONS(157),
    [anon_sym_displayed] = ACTIONS(157),
    [anon_sym_dms] = ACTIONS(157),
    [anon_sym_down] = ACTIONS(157),
    [anon_sym_eirp] = ACTIONS(157),
    [anon_sym_elevation] = ACTIONS(157),
    [anon_sym_ends] = ACTIONS(157),
    [anon_sym_erp] = ACTIONS(157),
    [anon_sym_etrs89] = ACTIONS(157),
    [anon_sym_figure] = ACTIONS(157),
    [anon_sym_fm] = ACTIONS(157),
    [anon_sym_for] = ACTIONS(157),
    [anon_sym_forward] = ACTIONS(157),
    [anon_sym_free_DASHspace] = ACTIONS(157),
    [anon_sym_frequency] = ACTIONS(157),
    [anon_sym_ft] = ACTIONS(157),
    [anon_sym_full] = ACTIONS(157),
    [anon_sym_guess] = ACTIONS(157),
    [anon_sym_hata_DASHopen] = ACTIONS(157),
    [anon_sym_hata_DASHsuburban] = ACTIONS(157),
    [anon_sym_hata_DASHurban] = ACTIONS(157),
    [anon_sym_height_DASHamsl] = ACTIONS(157),
    [anon_sym_horizontal] = ACTIONS(157),
    [anon_sym_if] = ACTIONS(157),
    [anon_sym_in] = ACTIONS(157),
    [anon_sym_input] = ACTIONS(157),
    [anon_sym_instead] = ACTIONS(157),
    [anon_sym_k] = ACTIONS(157),
    [anon_sym_kHz] = ACTIONS(157),
    [anon_sym_kW] = ACTIONS(157),
    [anon_sym_km] = ACTIONS(157),
    [anon_sym_latitude] = ACTIONS(157),
    [anon_sym_longitude] = ACTIONS(157),
    [anon_sym_m] = ACTIONS(157),
    [anon_sym_mW] = ACTIONS(157),
    [anon_sym_maximum] = ACTIONS(157),
    [anon_sym_mean] = ACTIONS(157),
    [anon_sym_medium] = ACTIONS(157),
    [anon_sym_nad27] = ACTIONS(157),
    [anon_sym_nad83] = ACTIONS(157),
    [anon_sym_net] = ACTIONS(157),
    [anon_sym_no] = ACTIONS(157),
    [anon_sym_nominal] = ACTIONS(157),
    [anon_sym_occupational] = ACTIONS(157),
    [anon_sym_of] = ACTIONS(157),
    [anon_sym_offset] = ACTIONS(157),
    [anon_sym_on] = ACTIONS(157),
    [anon_sym_one_DASHedge] = ACTIONS(157),
    [anon_sym_out] = ACTIONS(157),
    [anon_sym_output] = ACTIONS(157),
    [anon_sym_over] = ACTIONS(157),
    [anon_sym_pep] = ACTIONS(157),
    [anon_sym_per] = ACTIONS(157),
    [anon_sym_places] = ACTIONS(157),
    [anon_sym_public] = ACTIONS(157),
    [anon_sym_quiet_DASHrural] = ACTIONS(157),
    [anon_sym_quieting] = ACTIONS(157),
    [anon_sym_rated] = ACTIONS(157),
    [anon_sym_reactance] = ACTIONS(157),
    [anon_sym_reading] = ACTIONS(157),
    [anon_sym_realized] = ACTIONS(157),
    [anon_sym_receive_DASHfrequency] = ACTIONS(157),
    [anon_sym_receive_DASHloss] = ACTIONS(157),
    [anon_sym_reference] = ACTIONS(157),
    [anon_sym_reflected] = ACTIONS(157),
    [anon_sym_rejects] = ACTIONS(157),
    [anon_sym_residential] = ACTIONS(157),
    [anon_sym_rural] = ACTIONS(157),
    [anon_sym_series] = ACTIONS(157),
    [anon_sym_shared] = ACTIONS(157),
    [anon_sym_sheet] = ACTIONS(157),
    [anon_sym_shunt] = ACTIONS(157),
    [anon_sym_sinad] = ACTIONS(157),
    [anon_sym_since] = ACTIONS(157),
    [anon_sym_snr] = ACTIONS(157),
    [anon_sym_spread] = ACTIONS(157),
    [anon_sym_ssb] = ACTIONS(157),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(157),
    [anon_sym_then] = ACTIONS(157),
    [anon_sym_title] = ACTIONS(157),
    [anon_sym_to] = ACTIONS(157),
    [anon_sym_total] = ACTIONS(157),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(157),
    [anon_sym_two_DASHray] = ACTIONS(157),
    [anon_sym_typical] = ACTIONS(157),
    [anon_sym_up] = ACTIONS(157),
    [anon_sym_vertical] = ACTIONS(157),
    [anon_sym_way] = ACTIONS(157),
    [anon_sym_wet] = ACTIONS(157),
    [anon_sym_wgs84] = ACTIONS(157),
    [anon_sym_with] = ACTIONS(157),
    [anon_sym_within] = ACTIONS(157),
    [anon_sym_yes] = ACTIONS(157),
    [anon_sym_COMMA] = ACTIONS(155),
    [anon_sym_EQ] = ACTIONS(155),
    [anon_sym_LPAREN] = ACTIONS(155),
    [anon_sym_DASH] = ACTIONS(157),
    [anon_sym_u2212] = ACTIONS(157),
    [anon_sym_u2013] = ACTIONS(157),
    [anon_sym_PLUS] = ACTIONS(157),
    [anon_sym_STAR] = ACTIONS(155),
    [anon_sym_SLASH] = ACTIONS(157),
    [anon_sym_CARET] = ACTIONS(155),
    [sym__glued] = ACTIONS(157),
    [sym_date] = ACTIONS(157),
    [sym_dms] = ACTIONS(155),
    [sym_number] = ACTIONS(157),
    [sym_digit_name] = ACTIONS(157),
    [sym_string] = ACTIONS(155),
    [sym_comment] = ACTIONS(3),
  },
  [24] = {
    [ts_builtin_sym_end] = ACTIONS(151),
    [sym_name] = ACTIONS(153),
    [aux_sym__end_token1] = ACTIONS(151),
    [anon_sym_SEMI] = ACTIONS(151),
    [anon_sym_LBRACE] = ACTIONS(151),
    [anon_sym_RBRACE] = ACTIONS(151),
    [anon_sym_use] = ACTIONS(153),
    [anon_sym_band] = ACTIONS(153),
    [anon_sym_let] = ACTIONS(153),
    [anon_sym_cable] = ACTIONS(153),
    [anon_sym_connector] = ACTIONS(153),
    [anon_sym_device] = ACTIONS(153),
    [anon_sym_instrument] = ACTIONS(153),
    [anon_sym_session] = ACTIONS(153),
    [anon_sym_station] = ACTIONS(153),
    [anon_sym_chain] = ACTIONS(153),
    [anon_sym_licence] = ACTIONS(153),
    [anon_sym_rules] = ACTIONS(153),
    [anon_sym_link] = ACTIONS(153),
    [anon_sym_variant] = ACTIONS(153),
    [anon_sym_accept] = ACTIONS(153),
    [anon_sym_transmit] = ACTIONS(153),
    [anon_sym_receive] = ACTIONS(153),
    [anon_sym_impedance] = ACTIONS(153),
    [anon_sym_velocity] = ACTIONS(153),
    [anon_sym_loss] = ACTIONS(153),
    [anon_sym_construction] = ACTIONS(153),
    [anon_sym_wires] = ACTIONS(153),
    [anon_sym_valid] = ACTIONS(153),
    [anon_sym_accuracy] = ACTIONS(153),
    [anon_sym_rating] = ACTIONS(153),
    [anon_sym_voltage] = ACTIONS(153),
    [anon_sym_size] = ACTIONS(153),
    [anon_sym_conductor] = ACTIONS(153),
    [anon_sym_source] = ACTIONS(153),
    [anon_sym_recalled] = ACTIONS(153),
    [anon_sym_joins] = ACTIONS(153),
    [anon_sym_limit] = ACTIONS(153),
    [anon_sym_family] = ACTIONS(153),
    [anon_sym_bump] = ACTIONS(153),
    [anon_sym_return_DASHloss] = ACTIONS(153),
    [anon_sym_swr] = ACTIONS(153),
    [anon_sym_kind] = ACTIONS(153),
    [anon_sym_high] = ACTIONS(153),
    [anon_sym_low] = ACTIONS(153),
    [anon_sym_port] = ACTIONS(153),
    [anon_sym_from] = ACTIONS(153),
    [anon_sym_isolation] = ACTIONS(153),
    [anon_sym_ratio] = ACTIONS(153),
    [anon_sym_split] = ACTIONS(153),
    [anon_sym_tee] = ACTIONS(153),
    [anon_sym_reversed] = ACTIONS(153),
    [anon_sym_passes] = ACTIONS(153),
    [anon_sym_gain] = ACTIONS(153),
    [anon_sym_noise] = ACTIONS(153),
    [anon_sym_excess] = ACTIONS(153),
    [anon_sym_ways] = ACTIONS(153),
    [anon_sym_coupled] = ACTIONS(153),
    [anon_sym_calibrated] = ACTIONS(153),
    [anon_sym_scale] = ACTIONS(153),
    [anon_sym_resolution] = ACTIONS(153),
    [anon_sym_due] = ACTIONS(153),
    [anon_sym_linearity] = ACTIONS(153),
    [anon_sym_repeatability] = ACTIONS(153),
    [anon_sym_directivity] = ACTIONS(153),
    [anon_sym_certificate] = ACTIONS(153),
    [anon_sym_load] = ACTIONS(153),
    [anon_sym_read] = ACTIONS(153),
    [anon_sym_temperature] = ACTIONS(153),
    [anon_sym_generator] = ACTIONS(153),
    [anon_sym_drift] = ACTIONS(153),
    [anon_sym_piece] = ACTIONS(153),
    [anon_sym_readings] = ACTIONS(153),
    [anon_sym_resonance] = ACTIONS(153),
    [anon_sym_delay] = ACTIONS(153),
    [anon_sym_phase] = ACTIONS(153),
    [anon_sym_adapter] = ACTIONS(153),
    [anon_sym_position] = ACTIONS(153),
    [anon_sym_ground] = ACTIONS(153),
    [anon_sym_place] = ACTIONS(153),
    [anon_sym_under] = ACTIONS(153),
    [anon_sym_beside] = ACTIONS(153),
    [anon_sym_spot] = ACTIONS(153),
    [anon_sym_alone] = ACTIONS(153),
    [anon_sym_site_DASHnoise] = ACTIONS(153),
    [anon_sym_transmitter] = ACTIONS(153),
    [anon_sym_receiver] = ACTIONS(153),
    [anon_sym_transceiver] = ACTIONS(153),
    [anon_sym_run] = ACTIONS(153),
    [anon_sym_jumper] = ACTIONS(153),
    [anon_sym_tail] = ACTIONS(153),
    [anon_sym_pad] = ACTIONS(153),
    [anon_sym_filter] = ACTIONS(153),
    [anon_sym_isolator] = ACTIONS(153),
    [anon_sym_circulator] = ACTIONS(153),
    [anon_sym_protector] = ACTIONS(153),
    [anon_sym_switch] = ACTIONS(153),
    [anon_sym_coupler] = ACTIONS(153),
    [anon_sym_meter] = ACTIONS(153),
    [anon_sym_balun] = ACTIONS(153),
    [anon_sym_tuner] = ACTIONS(153),
    [anon_sym_duplexer] = ACTIONS(153),
    [anon_sym_diplexer] = ACTIONS(153),
    [anon_sym_combiner] = ACTIONS(153),
    [anon_sym_divider] = ACTIONS(153),
    [anon_sym_amplifier] = ACTIONS(153),
    [anon_sym_preamplifier] = ACTIONS(153),
    [anon_sym_antenna] = ACTIONS(153),
    [anon_sym_branches] = ACTIONS(153),
    [anon_sym_expect] = ACTIONS(153),
    [anon_sym_authority] = ACTIONS(153),
    [anon_sym_jurisdiction] = ACTIONS(153),
    [anon_sym_service] = ACTIONS(153),
    [anon_sym_edition] = ACTIONS(153),
    [anon_sym_dated] = ACTIONS(153),
    [anon_sym_until] = ACTIONS(153),
    [anon_sym_holder] = ACTIONS(153),
    [anon_sym_class] = ACTIONS(153),
    [anon_sym_ask] = ACTIONS(153),
    [anon_sym_threshold] = ACTIONS(153),
    [anon_sym_fixed] = ACTIONS(153),
    [anon_sym_condition] = ACTIONS(153),
    [anon_sym_reflection] = ACTIONS(153),
    [anon_sym_field] = ACTIONS(153),
    [anon_sym_hop] = ACTIONS(153),
    [anon_sym_profile] = ACTIONS(153),
    [anon_sym_distance] = ACTIONS(153),
    [anon_sym_k_DASHfactor] = ACTIONS(153),
    [anon_sym_need] = ACTIONS(153),
    [anon_sym_model] = ACTIONS(153),
    [anon_sym_coverage] = ACTIONS(153),
    [anon_sym_take] = ACTIONS(153),
    [anon_sym_put] = ACTIONS(153),
    [anon_sym_branch] = ACTIONS(153),
    [anon_sym_inner] = ACTIONS(153),
    [anon_sym_outer] = ACTIONS(153),
    [anon_sym_permittivity] = ACTIONS(153),
    [anon_sym_loss_DASHtangent] = ACTIONS(153),
    [anon_sym_strand] = ACTIONS(153),
    [anon_sym_strand_DASHdiameter] = ACTIONS(153),
    [anon_sym_braid] = ACTIONS(153),
    [anon_sym_resistivity] = ACTIONS(153),
    [anon_sym_inner_DASHresistivity] = ACTIONS(153),
    [anon_sym_outer_DASHresistivity] = ACTIONS(153),
    [anon_sym_diameter] = ACTIONS(153),
    [anon_sym_spacing] = ACTIONS(153),
    [anon_sym_baseline] = ACTIONS(153),
    [anon_sym_through] = ACTIONS(153),
    [anon_sym_open] = ACTIONS(153),
    [anon_sym_short] = ACTIONS(153),
    [anon_sym_equalise] = ACTIONS(153),
    [anon_sym_power] = ACTIONS(153),
    [anon_sym_mode] = ACTIONS(153),
    [anon_sym_duty] = ACTIONS(153),
    [anon_sym_keyed] = ACTIONS(153),
    [anon_sym_foldback] = ACTIONS(153),
    [anon_sym_bandwidth] = ACTIONS(153),
    [anon_sym_sensitivity] = ACTIONS(153),
    [anon_sym_blocking] = ACTIONS(153),
    [anon_sym_efficiency] = ACTIONS(153),
    [anon_sym_height] = ACTIONS(153),
    [anon_sym_pattern] = ACTIONS(153),
    [anon_sym_haat] = ACTIONS(153),
    [anon_sym_radius] = ACTIONS(153),
    [anon_sym_fails] = ACTIONS(153),
    [anon_sym_GHz] = ACTIONS(153),
    [anon_sym_Hz] = ACTIONS(153),
    [anon_sym_MHz] = ACTIONS(153),
    [anon_sym_above] = ACTIONS(153),
    [anon_sym_added] = ACTIONS(153),
    [anon_sym_after] = ACTIONS(153),
    [anon_sym_against] = ACTIONS(153),
    [anon_sym_agl] = ACTIONS(153),
    [anon_sym_allocated] = ACTIONS(153),
    [anon_sym_am] = ACTIONS(153),
    [anon_sym_ambient] = ACTIONS(153),
    [anon_sym_amsl] = ACTIONS(153),
    [anon_sym_apart] = ACTIONS(153),
    [anon_sym_at] = ACTIONS(153),
    [anon_sym_averaging] = ACTIONS(153),
    [anon_sym_below] = ACTIONS(153),
    [anon_sym_beyond] = ACTIONS(153),
    [anon_sym_blank] = ACTIONS(153),
    [anon_sym_bow] = ACTIONS(153),
    [anon_sym_bullington] = ACTIONS(153),
    [anon_sym_by] = ACTIONS(153),
    [anon_sym_carrier] = ACTIONS(153),
    [anon_sym_cascade] = ACTIONS(153),
    [anon_sym_city] = ACTIONS(153),
    [anon_sym_clad] = ACTIONS(153),
    [anon_sym_confidence] = ACTIONS(153),
    [anon_sym_corrected] = ACTIONS(153),
    [anon_sym_cw] = ACTIONS(153),
    [anon_sym_dB] = ACTIONS(153),
    [anon_sym_dBW] = ACTIONS(153),
    [anon_sym_dBd] = ACTIONS(153),
    [anon_sym_dBi] = ACTIONS(153),
    [anon_sym_dBm] = ACTIONS(153),
    [anon_sym_data] = ACTIONS(153),
    [anon_sym_date] = ACTIONS(153),
    [anon_sym_datum] = ACTIONS(153),
    [anon_sym_dc_DASHinput] = ACTIONS(153),
    [anon_sym_degrees] = ACTIONS(153),
    [anon_sym_delivered] = ACTIONS(153),
    [anon_sym_desense] = ACTIONS(153),
    [anon_sym_displayed] = ACTIONS(153),
    [anon_sym_dms] = ACTIONS(153),
    [anon_sym_down] = ACTIONS(153),
    [anon_sym_eirp] = ACTIONS(153),
    [anon_sym_elevation] = ACTIONS(153),
    [anon_sym_ends] = ACTIONS(153),
    [anon_sym_erp] = ACTIONS(153),
    [anon_sym_etrs89] = ACTIONS(153),
    [anon_sym_figure] = ACTIONS(153),
    [anon_sym_fm] = ACTIONS(153),
    [anon_sym_for] = ACTIONS(153),
    [anon_sym_forward] = ACTIONS(153),
    [anon_sym_free_DASHspace] = ACTIONS(153),
    [anon_sym_frequency] = ACTIONS(153),
    [anon_sym_ft] = ACTIONS(153),
    [anon_sym_full] = ACTIONS(153),
    [anon_sym_guess] = ACTIONS(153),
    [anon_sym_hata_DASHopen] = ACTIONS(153),
    [anon_sym_hata_DASHsuburban] = ACTIONS(153),
    [anon_sym_hata_DASHurban] = ACTIONS(153),
    [anon_sym_height_DASHamsl] = ACTIONS(153),
    [anon_sym_horizontal] = ACTIONS(153),
    [anon_sym_if] = ACTIONS(153),
    [anon_sym_in] = ACTIONS(153),
    [anon_sym_input] = ACTIONS(153),
    [anon_sym_instead] = ACTIONS(153),
    [anon_sym_k] = ACTIONS(153),
    [anon_sym_kHz] = ACTIONS(153),
    [anon_sym_kW] = ACTIONS(153),
    [anon_sym_km] = ACTIONS(153),
    [anon_sym_latitude] = ACTIONS(153),
    [anon_sym_longitude] = ACTIONS(153),
    [anon_sym_m] = ACTIONS(153),
    [anon_sym_mW] = ACTIONS(153),
    [anon_sym_maximum] = ACTIONS(153),
    [anon_sym_mean] = ACTIONS(153),
    [anon_sym_medium] = ACTIONS(153),
    [anon_sym_nad27] = ACTIONS(153),
    [anon_sym_nad83] = ACTIONS(153),
    [anon_sym_net] = ACTIONS(153),
    [anon_sym_no] = ACTIONS(153),
    [anon_sym_nominal] = ACTIONS(153),
    [anon_sym_occupational] = ACTIONS(153),
    [anon_sym_of] = ACTIONS(153),
    [anon_sym_offset] = ACTIONS(153),
    [anon_sym_on] = ACTIONS(153),
    [anon_sym_one_DASHedge] = ACTIONS(153),
    [anon_sym_out] = ACTIONS(153),
    [anon_sym_output] = ACTIONS(153),
    [anon_sym_over] = ACTIONS(153),
    [anon_sym_pep] = ACTIONS(153),
    [anon_sym_per] = ACTIONS(153),
    [anon_sym_places] = ACTIONS(153),
    [anon_sym_public] = ACTIONS(153),
    [anon_sym_quiet_DASHrural] = ACTIONS(153),
    [anon_sym_quieting] = ACTIONS(153),
    [anon_sym_rated] = ACTIONS(153),
    [anon_sym_reactance] = ACTIONS(153),
    [anon_sym_reading] = ACTIONS(153),
    [anon_sym_realized] = ACTIONS(153),
    [anon_sym_receive_DASHfrequency] = ACTIONS(153),
    [anon_sym_receive_DASHloss] = ACTIONS(153),
    [anon_sym_reference] = ACTIONS(153),
    [anon_sym_reflected] = ACTIONS(153),
    [anon_sym_rejects] = ACTIONS(153),
    [anon_sym_residential] = ACTIONS(153),
    [anon_sym_rural] = ACTIONS(153),
    [anon_sym_series] = ACTIONS(153),
    [anon_sym_shared] = ACTIONS(153),
    [anon_sym_sheet] = ACTIONS(153),
    [anon_sym_shunt] = ACTIONS(153),
    [anon_sym_sinad] = ACTIONS(153),
    [anon_sym_since] = ACTIONS(153),
    [anon_sym_snr] = ACTIONS(153),
    [anon_sym_spread] = ACTIONS(153),
    [anon_sym_ssb] = ACTIONS(153),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(153),
    [anon_sym_then] = ACTIONS(153),
    [anon_sym_title] = ACTIONS(153),
    [anon_sym_to] = ACTIONS(153),
    [anon_sym_total] = ACTIONS(153),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(153),
    [anon_sym_two_DASHray] = ACTIONS(153),
    [anon_sym_typical] = ACTIONS(153),
    [anon_sym_up] = ACTIONS(153),
    [anon_sym_vertical] = ACTIONS(153),
    [anon_sym_way] = ACTIONS(153),
    [anon_sym_wet] = ACTIONS(153),
    [anon_sym_wgs84] = ACTIONS(153),
    [anon_sym_with] = ACTIONS(153),
    [anon_sym_within] = ACTIONS(153),
    [anon_sym_yes] = ACTIONS(153),
    [anon_sym_COMMA] = ACTIONS(151),
    [anon_sym_EQ] = ACTIONS(151),
    [anon_sym_LPAREN] = ACTIONS(151),
    [anon_sym_DASH] = ACTIONS(153),
    [anon_sym_u2212] = ACTIONS(153),
    [anon_sym_u2013] = ACTIONS(153),
    [anon_sym_PLUS] = ACTIONS(153),
    [anon_sym_STAR] = ACTIONS(151),
    [anon_sym_SLASH] = ACTIONS(153),
    [anon_sym_CARET] = ACTIONS(151),
    [sym__glued] = ACTIONS(153),
    [sym_date] = ACTIONS(153),
    [sym_dms] = ACTIONS(151),
    [sym_number] = ACTIONS(153),
    [sym_digit_name] = ACTIONS(153),
    [sym_string] = ACTIONS(151),
    [sym_comment] = ACTIONS(3),
  },
  [25] = {
    [ts_builtin_sym_end] = ACTIONS(129),
    [sym_name] = ACTIONS(131),
    [aux_sym__end_token1] = ACTIONS(129),
    [anon_sym_SEMI] = ACTIONS(129),
    [anon_sym_LBRACE] = ACTIONS(129),
    [anon_sym_RBRACE] = ACTIONS(129),
    [anon_sym_use] = ACTIONS(131),
    [anon_sym_band] = ACTIONS(131),
    [anon_sym_let] = ACTIONS(131),
    [anon_sym_cable] = ACTIONS(131),
    [anon_sym_connector] = ACTIONS(131),
    [anon_sym_device] = ACTIONS(131),
    [anon_sym_instrument] = ACTIONS(131),
    [anon_sym_session] = ACTIONS(131),
    [anon_sym_station] = ACTIONS(131),
    [anon_sym_chain] = ACTIONS(131),
    [anon_sym_licence] = ACTIONS(131),
    [anon_sym_rules] = ACTIONS(131),
    [anon_sym_link] = ACTIONS(131),
    [anon_sym_variant] = ACTIONS(131),
    [anon_sym_accept] = ACTIONS(131),
    [anon_sym_transmit] = ACTIONS(131),
    [anon_sym_receive] = ACTIONS(131),
    [anon_sym_impedance] = ACTIONS(131),
    [anon_sym_velocity] = ACTIONS(131),
    [anon_sym_loss] = ACTIONS(131),
    [anon_sym_construction] = ACTIONS(131),
    [anon_sym_wires] = ACTIONS(131),
    [anon_sym_valid] = ACTIONS(131),
    [anon_sym_accuracy] = ACTIONS(131),
    [anon_sym_rating] = ACTIONS(131),
    [anon_sym_voltage] = ACTIONS(131),
    [anon_sym_size] = ACTIONS(131),
    [anon_sym_conductor] = ACTIONS(131),
    [anon_sym_source] = ACTIONS(131),
    [anon_sym_recalled] = ACTIONS(131),
    [anon_sym_joins] = ACTIONS(131),
    [anon_sym_limit] = ACTIONS(131),
    [anon_sym_family] = ACTIONS(131),
    [anon_sym_bump] = ACTIONS(131),
    [anon_sym_return_DASHloss] = ACTIONS(131),
    [anon_sym_swr] = ACTIONS(131),
    [anon_sym_kind] = ACTIONS(131),
    [anon_sym_high] = ACTIONS(131),
    [anon_sym_low] = ACTIONS(131),
    [anon_sym_port] = ACTIONS(131),
    [anon_sym_from] = ACTIONS(131),
    [anon_sym_isolation] = ACTIONS(131),
    [anon_sym_ratio] = ACTIONS(131),
    [anon_sym_split] = ACTIONS(131),
    [anon_sym_tee] = ACTIONS(131),
    [anon_sym_reversed] = ACTIONS(131),
    [anon_sym_passes] = ACTIONS(131),
    [anon_sym_gain] = ACTIONS(131),
    [anon_sym_noise] = ACTIONS(131),
    [anon_sym_excess] = ACTIONS(131),
    [anon_sym_ways] = ACTIONS(131),
    [anon_sym_coupled] = ACTIONS(131),
    [anon_sym_calibrated] = ACTIONS(131),
    [anon_sym_scale] = ACTIONS(131),
    [anon_sym_resolution] = ACTIONS(131),
    [anon_sym_due] = ACTIONS(131),
    [anon_sym_linearity] = ACTIONS(131),
    [anon_sym_repeatability] = ACTIONS(131),
    [anon_sym_directivity] = ACTIONS(131),
    [anon_sym_certificate] = ACTIONS(131),
    [anon_sym_load] = ACTIONS(131),
    [anon_sym_read] = ACTIONS(131),
    [anon_sym_temperature] = ACTIONS(131),
    [anon_sym_generator] = ACTIONS(131),
    [anon_sym_drift] = ACTIONS(131),
    [anon_sym_piece] = ACTIONS(131),
    [anon_sym_readings] = ACTIONS(131),
    [anon_sym_resonance] = ACTIONS(131),
    [anon_sym_delay] = ACTIONS(131),
    [anon_sym_phase] = ACTIONS(131),
    [anon_sym_adapter] = ACTIONS(131),
    [anon_sym_position] = ACTIONS(131),
    [anon_sym_ground] = ACTIONS(131),
    [anon_sym_place] = ACTIONS(131),
    [anon_sym_under] = ACTIONS(131),
    [anon_sym_beside] = ACTIONS(131),
    [anon_sym_spot] = ACTIONS(131),
    [anon_sym_alone] = ACTIONS(131),
    [anon_sym_site_DASHnoise] = ACTIONS(131),
    [anon_sym_transmitter] = ACTIONS(131),
    [anon_sym_receiver] = ACTIONS(131),
    [anon_sym_transceiver] = ACTIONS(131),
    [anon_sym_run] = ACTIONS(131),
    [anon_sym_jumper] = ACTIONS(131),
    [anon_sym_tail] = ACTIONS(131),
    [anon_sym_pad] = ACTIONS(131),
    [anon_sym_filter] = ACTIONS(131),
    [anon_sym_isolator] = ACTIONS(131),
    [anon_sym_circulator] = ACTIONS(131),
    [anon_sym_protector] = ACTIONS(131),
    [anon_sym_switch] = ACTIONS(131),
    [anon_sym_coupler] = ACTIONS(131),
    [anon_sym_meter] = ACTIONS(131),
    [anon_sym_balun] = ACTIONS(131),
    [anon_sym_tuner] = ACTIONS(131),
    [anon_sym_duplexer] = ACTIONS(131),
    [anon_sym_diplexer] = ACTIONS(131),
    [anon_sym_combiner] = ACTIONS(131),
    [anon_sym_divider] = ACTIONS(131),
    [anon_sym_amplifier] = ACTIONS(131),
    [anon_sym_preamplifier] = ACTIONS(131),
    [anon_sym_antenna] = ACTIONS(131),
    [anon_sym_branches] = ACTIONS(131),
    [anon_sym_expect] = ACTIONS(131),
    [anon_sym_authority] = ACTIONS(131),
    [anon_sym_jurisdiction] = ACTIONS(131),
    [anon_sym_service] = ACTIONS(131),
    [anon_sym_edition] = ACTIONS(131),
    [anon_sym_dated] = ACTIONS(131),
    [anon_sym_until] = ACTIONS(131),
    [anon_sym_holder] = ACTIONS(131),
    [anon_sym_class] = ACTIONS(131),
    [anon_sym_ask] = ACTIONS(131),
    [anon_sym_threshold] = ACTIONS(131),
    [anon_sym_fixed] = ACTIONS(131),
    [anon_sym_condition] = ACTIONS(131),
    [anon_sym_reflection] = ACTIONS(131),
    [anon_sym_field] = ACTIONS(131),
    [anon_sym_hop] = ACTIONS(131),
    [anon_sym_profile] = ACTIONS(131),
    [anon_sym_distance] = ACTIONS(131),
    [anon_sym_k_DASHfactor] = ACTIONS(131),
    [anon_sym_need] = ACTIONS(131),
    [anon_sym_model] = ACTIONS(131),
    [anon_sym_coverage] = ACTIONS(131),
    [anon_sym_take] = ACTIONS(131),
    [anon_sym_put] = ACTIONS(131),
    [anon_sym_branch] = ACTIONS(131),
    [anon_sym_inner] = ACTIONS(131),
    [anon_sym_outer] = ACTIONS(131),
    [anon_sym_permittivity] = ACTIONS(131),
    [anon_sym_loss_DASHtangent] = ACTIONS(131),
    [anon_sym_strand] = ACTIONS(131),
    [anon_sym_strand_DASHdiameter] = ACTIONS(131),
    [anon_sym_braid] = ACTIONS(131),
    [anon_sym_resistivity] = ACTIONS(131),
    [anon_sym_inner_DASHresistivity] = ACTIONS(131),
    [anon_sym_outer_DASHresistivity] = ACTIONS(131),
    [anon_sym_diameter] = ACTIONS(131),
    [anon_sym_spacing] = ACTIONS(131),
    [anon_sym_baseline] = ACTIONS(131),
    [anon_sym_through] = ACTIONS(131),
    [anon_sym_open] = ACTIONS(131),
    [anon_sym_short] = ACTIONS(131),
    [anon_sym_equalise] = ACTIONS(131),
    [anon_sym_power] = ACTIONS(131),
    [anon_sym_mode] = ACTIONS(131),
    [anon_sym_duty] = ACTIONS(131),
    [anon_sym_keyed] = ACTIONS(131),
    [anon_sym_foldback] = ACTIONS(131),
    [anon_sym_bandwidth] = ACTIONS(131),
    [anon_sym_sensitivity] = ACTIONS(131),
    [anon_sym_blocking] = ACTIONS(131),
    [anon_sym_efficiency] = ACTIONS(131),
    [anon_sym_height] = ACTIONS(131),
    [anon_sym_pattern] = ACTIONS(131),
    [anon_sym_haat] = ACTIONS(131),
    [anon_sym_radius] = ACTIONS(131),
    [anon_sym_fails] = ACTIONS(131),
    [anon_sym_GHz] = ACTIONS(131),
    [anon_sym_Hz] = ACTIONS(131),
    [anon_sym_MHz] = ACTIONS(131),
    [anon_sym_above] = ACTIONS(131),
    [anon_sym_added] = ACTIONS(131),
    [anon_sym_after] = ACTIONS(131),
    [anon_sym_against] = ACTIONS(131),
    [anon_sym_agl] = ACTIONS(131),
    [anon_sym_allocated] = ACTIONS(131),
    [anon_sym_am] = ACTIONS(131),
    [anon_sym_ambient] = ACTIONS(131),
    [anon_sym_amsl] = ACTIONS(131),
    [anon_sym_apart] = ACTIONS(131),
    [anon_sym_at] = ACTIONS(131),
    [anon_sym_averaging] = ACTIONS(131),
    [anon_sym_below] = ACTIONS(131),
    [anon_sym_beyond] = ACTIONS(131),
    [anon_sym_blank] = ACTIONS(131),
    [anon_sym_bow] = ACTIONS(131),
    [anon_sym_bullington] = ACTIONS(131),
    [anon_sym_by] = ACTIONS(131),
    [anon_sym_carrier] = ACTIONS(131),
    [anon_sym_cascade] = ACTIONS(131),
    [anon_sym_city] = ACTIONS(131),
    [anon_sym_clad] = ACTIONS(131),
    [anon_sym_confidence] = ACTIONS(131),
    [anon_sym_corrected] = ACTIONS(131),
    [anon_sym_cw] = ACTIONS(131),
    [anon_sym_dB] = ACTIONS(131),
    [anon_sym_dBW] = ACTIONS(131),
    [anon_sym_dBd] = ACTIONS(131),
    [anon_sym_dBi] = ACTIONS(131),
    [anon_sym_dBm] = ACTIONS(131),
    [anon_sym_data] = ACTIONS(131),
    [anon_sym_date] = ACTIONS(131),
    [anon_sym_datum] = ACTIONS(131),
    [anon_sym_dc_DASHinput] = ACTIONS(131),
    [anon_sym_degrees] = ACTIONS(131),
    [anon_sym_delivered] = ACTIONS(131),
    [anon_sym_desense] = ACTIONS(131),
    [anon_sym_displayed] = ACTIONS(131),
    [anon_sym_dms] = ACTIONS(131),
    [anon_sym_down] = ACTIONS(131),
    [anon_sym_eirp] = ACTIONS(131),
    [anon_sym_elevation] = ACTIONS(131),
    [anon_sym_ends] = ACTIONS(131),
    [anon_sym_erp] = ACTIONS(131),
    [anon_sym_etrs89] = ACTIONS(131),
    [anon_sym_figure] = ACTIONS(131),
    [anon_sym_fm] = ACTIONS(131),
    [anon_sym_for] = ACTIONS(131),
    [anon_sym_forward] = ACTIONS(131),
    [anon_sym_free_DASHspace] = ACTIONS(131),
    [anon_sym_frequency] = ACTIONS(131),
    [anon_sym_ft] = ACTIONS(131),
    [anon_sym_full] = ACTIONS(131),
    [anon_sym_guess] = ACTIONS(131),
    [anon_sym_hata_DASHopen] = ACTIONS(131),
    [anon_sym_hata_DASHsuburban] = ACTIONS(131),
    [anon_sym_hata_DASHurban] = ACTIONS(131),
    [anon_sym_height_DASHamsl] = ACTIONS(131),
    [anon_sym_horizontal] = ACTIONS(131),
    [anon_sym_if] = ACTIONS(131),
    [anon_sym_in] = ACTIONS(131),
    [anon_sym_input] = ACTIONS(131),
    [anon_sym_instead] = ACTIONS(131),
    [anon_sym_k] = ACTIONS(131),
    [anon_sym_kHz] = ACTIONS(131),
    [anon_sym_kW] = ACTIONS(131),
    [anon_sym_km] = ACTIONS(131),
    [anon_sym_latitude] = ACTIONS(131),
    [anon_sym_longitude] = ACTIONS(131),
    [anon_sym_m] = ACTIONS(131),
    [anon_sym_mW] = ACTIONS(131),
    [anon_sym_maximum] = ACTIONS(131),
    [anon_sym_mean] = ACTIONS(131),
    [anon_sym_medium] = ACTIONS(131),
    [anon_sym_nad27] = ACTIONS(131),
    [anon_sym_nad83] = ACTIONS(131),
    [anon_sym_net] = ACTIONS(131),
    [anon_sym_no] = ACTIONS(131),
    [anon_sym_nominal] = ACTIONS(131),
    [anon_sym_occupational] = ACTIONS(131),
    [anon_sym_of] = ACTIONS(131),
    [anon_sym_offset] = ACTIONS(131),
    [anon_sym_on] = ACTIONS(131),
    [anon_sym_one_DASHedge] = ACTIONS(131),
    [anon_sym_out] = ACTIONS(131),
    [anon_sym_output] = ACTIONS(131),
    [anon_sym_over] = ACTIONS(131),
    [anon_sym_pep] = ACTIONS(131),
    [anon_sym_per] = ACTIONS(131),
    [anon_sym_places] = ACTIONS(131),
    [anon_sym_public] = ACTIONS(131),
    [anon_sym_quiet_DASHrural] = ACTIONS(131),
    [anon_sym_quieting] = ACTIONS(131),
    [anon_sym_rated] = ACTIONS(131),
    [anon_sym_reactance] = ACTIONS(131),
    [anon_sym_reading] = ACTIONS(131),
    [anon_sym_realized] = ACTIONS(131),
    [anon_sym_receive_DASHfrequency] = ACTIONS(131),
    [anon_sym_receive_DASHloss] = ACTIONS(131),
    [anon_sym_reference] = ACTIONS(131),
    [anon_sym_reflected] = ACTIONS(131),
    [anon_sym_rejects] = ACTIONS(131),
    [anon_sym_residential] = ACTIONS(131),
    [anon_sym_rural] = ACTIONS(131),
    [anon_sym_series] = ACTIONS(131),
    [anon_sym_shared] = ACTIONS(131),
    [anon_sym_sheet] = ACTIONS(131),
    [anon_sym_shunt] = ACTIONS(131),
    [anon_sym_sinad] = ACTIONS(131),
    [anon_sym_since] = ACTIONS(131),
    [anon_sym_snr] = ACTIONS(131),
    [anon_sym_spread] = ACTIONS(131),
    [anon_sym_ssb] = ACTIONS(131),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(131),
    [anon_sym_then] = ACTIONS(131),
    [anon_sym_title] = ACTIONS(131),
    [anon_sym_to] = ACTIONS(131),
    [anon_sym_total] = ACTIONS(131),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(131),
    [anon_sym_two_DASHray] = ACTIONS(131),
    [anon_sym_typical] = ACTIONS(131),
    [anon_sym_up] = ACTIONS(131),
    [anon_sym_vertical] = ACTIONS(131),
    [anon_sym_way] = ACTIONS(131),
    [anon_sym_wet] = ACTIONS(131),
    [anon_sym_wgs84] = ACTIONS(131),
    [anon_sym_with] = ACTIONS(131),
    [anon_sym_within] = ACTIONS(131),
    [anon_sym_yes] = ACTIONS(131),
    [anon_sym_COMMA] = ACTIONS(129),
    [anon_sym_EQ] = ACTIONS(129),
    [anon_sym_LPAREN] = ACTIONS(129),
    [anon_sym_DASH] = ACTIONS(131),
    [anon_sym_u2212] = ACTIONS(131),
    [anon_sym_u2013] = ACTIONS(131),
    [anon_sym_PLUS] = ACTIONS(131),
    [anon_sym_STAR] = ACTIONS(129),
    [anon_sym_SLASH] = ACTIONS(131),
    [anon_sym_CARET] = ACTIONS(129),
    [sym__glued] = ACTIONS(131),
    [sym_date] = ACTIONS(131),
    [sym_dms] = ACTIONS(129),
    [sym_number] = ACTIONS(131),
    [sym_digit_name] = ACTIONS(131),
    [sym_string] = ACTIONS(129),
    [sym_comment] = ACTIONS(3),
  },
  [26] = {
    [ts_builtin_sym_end] = ACTIONS(133),
    [sym_name] = ACTIONS(135),
    [aux_sym__end_token1] = ACTIONS(133),
    [anon_sym_SEMI] = ACTIONS(133),
    [anon_sym_LBRACE] = ACTIONS(133),
    [anon_sym_RBRACE] = ACTIONS(133),
    [anon_sym_use] = ACTIONS(135),
    [anon_sym_band] = ACTIONS(135),
    [anon_sym_let] = ACTIONS(135),
    [anon_sym_cable] = ACTIONS(135),
    [anon_sym_connector] = ACTIONS(135),
    [anon_sym_device] = ACTIONS(135),
    [anon_sym_instrument] = ACTIONS(135),
    [anon_sym_session] = ACTIONS(135),
    [anon_sym_station] = ACTIONS(135),
    [anon_sym_chain] = ACTIONS(135),
    [anon_sym_licence] = ACTIONS(135),
    [anon_sym_rules] = ACTIONS(135),
    [anon_sym_link] = ACTIONS(135),
    [anon_sym_variant] = ACTIONS(135),
    [anon_sym_accept] = ACTIONS(135),
    [anon_sym_transmit] = ACTIONS(135),
    [anon_sym_receive] = ACTIONS(135),
    [anon_sym_impedance] = ACTIONS(135),
    [anon_sym_velocity] = ACTIONS(135),
    [anon_sym_loss] = ACTIONS(135),
    [anon_sym_construction] = ACTIONS(135),
    [anon_sym_wires] = ACTIONS(135),
    [anon_sym_valid] = ACTIONS(135),
    [anon_sym_accuracy] = ACTIONS(135),
    [anon_sym_rating] = ACTIONS(135),
    [anon_sym_voltage] = ACTIONS(135),
    [anon_sym_size] = ACTIONS(135),
    [anon_sym_conductor] = ACTIONS(135),
    [anon_sym_source] = ACTIONS(135),
    [anon_sym_recalled] = ACTIONS(135),
    [anon_sym_joins] = ACTIONS(135),
    [anon_sym_limit] = ACTIONS(135),
    [anon_sym_family] = ACTIONS(135),
    [anon_sym_bump] = ACTIONS(135),
    [anon_sym_return_DASHloss] = ACTIONS(135),
    [anon_sym_swr] = ACTIONS(135),
    [anon_sym_kind] = ACTIONS(135),
    [anon_sym_high] = ACTIONS(135),
    [anon_sym_low] = ACTIONS(135),
    [anon_sym_port] = ACTIONS(135),
    [anon_sym_from] = ACTIONS(135),
    [anon_sym_isolation] = ACTIONS(135),
    [anon_sym_ratio] = ACTIONS(135),
    [anon_sym_split] = ACTIONS(135),
    [anon_sym_tee] = ACTIONS(135),
    [anon_sym_reversed] = ACTIONS(135),
    [anon_sym_passes] = ACTIONS(135),
    [anon_sym_gain] = ACTIONS(135),
    [anon_sym_noise] = ACTIONS(135),
    [anon_sym_excess] = ACTIONS(135),
    [anon_sym_ways] = ACTIONS(135),
    [anon_sym_coupled] = ACTIONS(135),
    [anon_sym_calibrated] = ACTIONS(135),
    [anon_sym_scale] = ACTIONS(135),
    [anon_sym_resolution] = ACTIONS(135),
    [anon_sym_due] = ACTIONS(135),
    [anon_sym_linearity] = ACTIONS(135),
    [anon_sym_repeatability] = ACTIONS(135),
    [anon_sym_directivity] = ACTIONS(135),
    [anon_sym_certificate] = ACTIONS(135),
    [anon_sym_load] = ACTIONS(135),
    [anon_sym_read] = ACTIONS(135),
    [anon_sym_temperature] = ACTIONS(135),
    [anon_sym_generator] = ACTIONS(135),
    [anon_sym_drift] = ACTIONS(135),
    [anon_sym_piece] = ACTIONS(135),
    [anon_sym_readings] = ACTIONS(135),
    [anon_sym_resonance] = ACTIONS(135),
    [anon_sym_delay] = ACTIONS(135),
    [anon_sym_phase] = ACTIONS(135),
    [anon_sym_adapter] = ACTIONS(135),
    [anon_sym_position] = ACTIONS(135),
    [anon_sym_ground] = ACTIONS(135),
    [anon_sym_place] = ACTIONS(135),
    [anon_sym_under] = ACTIONS(135),
    [anon_sym_beside] = ACTIONS(135),
    [anon_sym_spot] = ACTIONS(135),
    [anon_sym_alone] = ACTIONS(135),
    [anon_sym_site_DASHnoise] = ACTIONS(135),
    [anon_sym_transmitter] = ACTIONS(135),
    [anon_sym_receiver] = ACTIONS(135),
    [anon_sym_transceiver] = ACTIONS(135),
    [anon_sym_run] = ACTIONS(135),
    [anon_sym_jumper] = ACTIONS(135),
    [anon_sym_tail] = ACTIONS(135),
    [anon_sym_pad] = ACTIONS(135),
    [anon_sym_filter] = ACTIONS(135),
    [anon_sym_isolator] = ACTIONS(135),
    [anon_sym_circulator] = ACTIONS(135),
    [anon_sym_protector] = ACTIONS(135),
    [anon_sym_switch] = ACTIONS(135),
    [anon_sym_coupler] = ACTIONS(135),
    [anon_sym_meter] = ACTIONS(135),
    [anon_sym_balun] = ACTIONS(135),
    [anon_sym_tuner] = ACTIONS(135),
    [anon_sym_duplexer] = ACTIONS(135),
    [anon_sym_diplexer] = ACTIONS(135),
    [anon_sym_combiner] = ACTIONS(135),
    [anon_sym_divider] = ACTIONS(135),
    [anon_sym_amplifier] = ACTIONS(135),
    [anon_sym_preamplifier] = ACTIONS(135),
    [anon_sym_antenna] = ACTIONS(135),
    [anon_sym_branches] = ACTIONS(135),
    [anon_sym_expect] = ACTIONS(135),
    [anon_sym_authority] = ACTIONS(135),
    [anon_sym_jurisdiction] = ACTIONS(135),
    [anon_sym_service] = ACTIONS(135),
    [anon_sym_edition] = ACTIONS(135),
    [anon_sym_dated] = ACTIONS(135),
    [anon_sym_until] = ACTIONS(135),
    [anon_sym_holder] = ACTIONS(135),
    [anon_sym_class] = ACTIONS(135),
    [anon_sym_ask] = ACTIONS(135),
    [anon_sym_threshold] = ACTIONS(135),
    [anon_sym_fixed] = ACTIONS(135),
    [anon_sym_condition] = ACTIONS(135),
    [anon_sym_reflection] = ACTIONS(135),
    [anon_sym_field] = ACTIONS(135),
    [anon_sym_hop] = ACTIONS(135),
    [anon_sym_profile] = ACTIONS(135),
    [anon_sym_distance] = ACTIONS(135),
    [anon_sym_k_DASHfactor] = ACTIONS(135),
    [anon_sym_need] = ACTIONS(135),
    [anon_sym_model] = ACTIONS(135),
    [anon_sym_coverage] = ACTIONS(135),
    [anon_sym_take] = ACTIONS(135),
    [anon_sym_put] = ACTIONS(135),
    [anon_sym_branch] = ACTIONS(135),
    [anon_sym_inner] = ACTIONS(135),
    [anon_sym_outer] = ACTIONS(135),
    [anon_sym_permittivity] = ACTIONS(135),
    [anon_sym_loss_DASHtangent] = ACTIONS(135),
    [anon_sym_strand] = ACTIONS(135),
    [anon_sym_strand_DASHdiameter] = ACTIONS(135),
    [anon_sym_braid] = ACTIONS(135),
    [anon_sym_resistivity] = ACTIONS(135),
    [anon_sym_inner_DASHresistivity] = ACTIONS(135),
    [anon_sym_outer_DASHresistivity] = ACTIONS(135),
    [anon_sym_diameter] = ACTIONS(135),
    [anon_sym_spacing] = ACTIONS(135),
    [anon_sym_baseline] = ACTIONS(135),
    [anon_sym_through] = ACTIONS(135),
    [anon_sym_open] = ACTIONS(135),
    [anon_sym_short] = ACTIONS(135),
    [anon_sym_equalise] = ACTIONS(135),
    [anon_sym_power] = ACTIONS(135),
    [anon_sym_mode] = ACTIONS(135),
    [anon_sym_duty] = ACTIONS(135),
    [anon_sym_keyed] = ACTIONS(135),
    [anon_sym_foldback] = ACTIONS(135),
    [anon_sym_bandwidth] = ACTIONS(135),
    [anon_sym_sensitivity] = ACTIONS(135),
    [anon_sym_blocking] = ACTIONS(135),
    [anon_sym_efficiency] = ACTIONS(135),
    [anon_sym_height] = ACTIONS(135),
    [anon_sym_pattern] = ACTIONS(135),
    [anon_sym_haat] = ACTIONS(135),
    [anon_sym_radius] = ACTIONS(135),
    [anon_sym_fails] = ACTIONS(135),
    [anon_sym_GHz] = ACTIONS(135),
    [anon_sym_Hz] = ACTIONS(135),
    [anon_sym_MHz] = ACTIONS(135),
    [anon_sym_above] = ACTIONS(135),
    [anon_sym_added] = ACTIONS(135),
    [anon_sym_after] = ACTIONS(135),
    [anon_sym_against] = ACTIONS(135),
    [anon_sym_agl] = ACTIONS(135),
    [anon_sym_allocated] = ACTIONS(135),
    [anon_sym_am] = ACTIONS(135),
    [anon_sym_ambient] = ACTIONS(135),
    [anon_sym_amsl] = ACTIONS(135),
    [anon_sym_apart] = ACTIONS(135),
    [anon_sym_at] = ACTIONS(135),
    [anon_sym_averaging] = ACTIONS(135),
    [anon_sym_below] = ACTIONS(135),
    [anon_sym_beyond] = ACTIONS(135),
    [anon_sym_blank] = ACTIONS(135),
    [anon_sym_bow] = ACTIONS(135),
    [anon_sym_bullington] = ACTIONS(135),
    [anon_sym_by] = ACTIONS(135),
    [anon_sym_carrier] = ACTIONS(135),
    [anon_sym_cascade] = ACTIONS(135),
    [anon_sym_city] = ACTIONS(135),
    [anon_sym_clad] = ACTIONS(135),
    [anon_sym_confidence] = ACTIONS(135),
    [anon_sym_corrected] = ACTIONS(135),
    [anon_sym_cw] = ACTIONS(135),
    [anon_sym_dB] = ACTIONS(135),
    [anon_sym_dBW] = ACTIONS(135),
    [anon_sym_dBd] = ACTIONS(135),
    [anon_sym_dBi] = ACTIONS(135),
    [anon_sym_dBm] = ACTIONS(135),
    [anon_sym_data] = ACTIONS(135),
    [anon_sym_date] = ACTIONS(135),
    [anon_sym_datum] = ACTIONS(135),
    [anon_sym_dc_DASHinput] = ACTIONS(135),
    [anon_sym_degrees] = ACTIONS(135),
    [anon_sym_delivered] = ACTIONS(135),
    [anon_sym_desense] = ACTIONS(135),
    [anon_sym_displayed] = ACTIONS(135),
    [anon_sym_dms] = ACTIONS(135),
    [anon_sym_down] = ACTIONS(135),
    [anon_sym_eirp] = ACTIONS(135),
    [anon_sym_elevation] = ACTIONS(135),
    [anon_sym_ends] = ACTIONS(135),
    [anon_sym_erp] = ACTIONS(135),
    [anon_sym_etrs89] = ACTIONS(135),
    [anon_sym_figure] = ACTIONS(135),
    [anon_sym_fm] = ACTIONS(135),
    [anon_sym_for] = ACTIONS(135),
    [anon_sym_forward] = ACTIONS(135),
    [anon_sym_free_DASHspace] = ACTIONS(135),
    [anon_sym_frequency] = ACTIONS(135),
    [anon_sym_ft] = ACTIONS(135),
    [anon_sym_full] = ACTIONS(135),
    [anon_sym_guess] = ACTIONS(135),
    [anon_sym_hata_DASHopen] = ACTIONS(135),
    [anon_sym_hata_DASHsuburban] = ACTIONS(135),
    [anon_sym_hata_DASHurban] = ACTIONS(135),
    [anon_sym_height_DASHamsl] = ACTIONS(135),
    [anon_sym_horizontal] = ACTIONS(135),
    [anon_sym_if] = ACTIONS(135),
    [anon_sym_in] = ACTIONS(135),
    [anon_sym_input] = ACTIONS(135),
    [anon_sym_instead] = ACTIONS(135),
    [anon_sym_k] = ACTIONS(135),
    [anon_sym_kHz] = ACTIONS(135),
    [anon_sym_kW] = ACTIONS(135),
    [anon_sym_km] = ACTIONS(135),
    [anon_sym_latitude] = ACTIONS(135),
    [anon_sym_longitude] = ACTIONS(135),
    [anon_sym_m] = ACTIONS(135),
    [anon_sym_mW] = ACTIONS(135),
    [anon_sym_maximum] = ACTIONS(135),
    [anon_sym_mean] = ACTIONS(135),
    [anon_sym_medium] = ACTIONS(135),
    [anon_sym_nad27] = ACTIONS(135),
    [anon_sym_nad83] = ACTIONS(135),
    [anon_sym_net] = ACTIONS(135),
    [anon_sym_no] = ACTIONS(135),
    [anon_sym_nominal] = ACTIONS(135),
    [anon_sym_occupational] = ACTIONS(135),
    [anon_sym_of] = ACTIONS(135),
    [anon_sym_offset] = ACTIONS(135),
    [anon_sym_on] = ACTIONS(135),
    [anon_sym_one_DASHedge] = ACTIONS(135),
    [anon_sym_out] = ACTIONS(135),
    [anon_sym_output] = ACTIONS(135),
    [anon_sym_over] = ACTIONS(135),
    [anon_sym_pep] = ACTIONS(135),
    [anon_sym_per] = ACTIONS(135),
    [anon_sym_places] = ACTIONS(135),
    [anon_sym_public] = ACTIONS(135),
    [anon_sym_quiet_DASHrural] = ACTIONS(135),
    [anon_sym_quieting] = ACTIONS(135),
    [anon_sym_rated] = ACTIONS(135),
    [anon_sym_reactance] = ACTIONS(135),
    [anon_sym_reading] = ACTIONS(135),
    [anon_sym_realized] = ACTIONS(135),
    [anon_sym_receive_DASHfrequency] = ACTIONS(135),
    [anon_sym_receive_DASHloss] = ACTIONS(135),
    [anon_sym_reference] = ACTIONS(135),
    [anon_sym_reflected] = ACTIONS(135),
    [anon_sym_rejects] = ACTIONS(135),
    [anon_sym_residential] = ACTIONS(135),
    [anon_sym_rural] = ACTIONS(135),
    [anon_sym_series] = ACTIONS(135),
    [anon_sym_shared] = ACTIONS(135),
    [anon_sym_sheet] = ACTIONS(135),
    [anon_sym_shunt] = ACTIONS(135),
    [anon_sym_sinad] = ACTIONS(135),
    [anon_sym_since] = ACTIONS(135),
    [anon_sym_snr] = ACTIONS(135),
    [anon_sym_spread] = ACTIONS(135),
    [anon_sym_ssb] = ACTIONS(135),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(135),
    [anon_sym_then] = ACTIONS(135),
    [anon_sym_title] = ACTIONS(135),
    [anon_sym_to] = ACTIONS(135),
    [anon_sym_total] = ACTIONS(135),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(135),
    [anon_sym_two_DASHray] = ACTIONS(135),
    [anon_sym_typical] = ACTIONS(135),
    [anon_sym_up] = ACTIONS(135),
    [anon_sym_vertical] = ACTIONS(135),
    [anon_sym_way] = ACTIONS(135),
    [anon_sym_wet] = ACTIONS(135),
    [anon_sym_wgs84] = ACTIONS(135),
    [anon_sym_with] = ACTIONS(135),
    [anon_sym_within] = ACTIONS(135),
    [anon_sym_yes] = ACTIONS(135),
    [anon_sym_COMMA] = ACTIONS(133),
    [anon_sym_EQ] = ACTIONS(133),
    [anon_sym_LPAREN] = ACTIONS(133),
    [anon_sym_DASH] = ACTIONS(135),
    [anon_sym_u2212] = ACTIONS(135),
    [anon_sym_u2013] = ACTIONS(135),
    [anon_sym_PLUS] = ACTIONS(135),
    [anon_sym_STAR] = ACTIONS(133),
    [anon_sym_SLASH] = ACTIONS(135),
    [anon_sym_CARET] = ACTIONS(133),
    [sym__glued] = ACTIONS(135),
    [sym_date] = ACTIONS(135),
    [sym_dms] = ACTIONS(133),
    [sym_number] = ACTIONS(135),
    [sym_digit_name] = ACTIONS(135),
    [sym_string] = ACTIONS(133),
    [sym_comment] = ACTIONS(3),
  },
  [27] = {
    [ts_builtin_sym_end] = ACTIONS(147),
    [sym_name] = ACTIONS(149),
    [aux_sym__end_token1] = ACTIONS(147),
    [anon_sym_SEMI] = ACTIONS(147),
    [anon_sym_LBRACE] = ACTIONS(147),
    [anon_sym_RBRACE] = ACTIONS(147),
    [anon_sym_use] = ACTIONS(149),
    [anon_sym_band] = ACTIONS(149),
    [anon_sym_let] = ACTIONS(149),
    [anon_sym_cable] = ACTIONS(149),
    [anon_sym_connector] = ACTIONS(149),
    [anon_sym_device] = ACTIONS(149),
    [anon_sym_instrument] = ACTIONS(149),
    [anon_sym_session] = ACTIONS(149),
    [anon_sym_station] = ACTIONS(149),
    [anon_sym_chain] = ACTIONS(149),
    [anon_sym_licence] = ACTIONS(149),
    [anon_sym_rules] = ACTIONS(149),
    [anon_sym_link] = ACTIONS(149),
    [anon_sym_variant] = ACTIONS(149),
    [anon_sym_accept] = ACTIONS(149),
    [anon_sym_transmit] = ACTIONS(149),
    [anon_sym_receive] = ACTIONS(149),
    [anon_sym_impedance] = ACTIONS(149),
    [anon_sym_velocity] = ACTIONS(149),
    [anon_sym_loss] = ACTIONS(149),
    [anon_sym_construction] = ACTIONS(149),
    [anon_sym_wires] = ACTIONS(149),
    [anon_sym_valid] = ACTIONS(149),
    [anon_sym_accuracy] = ACTIONS(149),
    [anon_sym_rating] = ACTIONS(149),
    [anon_sym_voltage] = ACTIONS(149),
    [anon_sym_size] = ACTIONS(149),
    [anon_sym_conductor] = ACTIONS(149),
    [anon_sym_source] = ACTIONS(149),
    [anon_sym_recalled] = ACTIONS(149),
    [anon_sym_joins] = ACTIONS(149),
    [anon_sym_limit] = ACTIONS(149),
    [anon_sym_family] = ACTIONS(149),
    [anon_sym_bump] = ACTIONS(149),
    [anon_sym_return_DASHloss] = ACTIONS(149),
    [anon_sym_swr] = ACTIONS(149),
    [anon_sym_kind] = ACTIONS(149),
    [anon_sym_high] = ACTIONS(149),
    [anon_sym_low] = ACTIONS(149),
    [anon_sym_port] = ACTIONS(149),
    [anon_sym_from] = ACTIONS(149),
    [anon_sym_isolation] = ACTIONS(149),
    [anon_sym_ratio] = ACTIONS(149),
    [anon_sym_split] = ACTIONS(149),
    [anon_sym_tee] = ACTIONS(149),
    [anon_sym_reversed] = ACTIONS(149),
    [anon_sym_passes] = ACTIONS(149),
    [anon_sym_gain] = ACTIONS(149),
    [anon_sym_noise] = ACTIONS(149),
    [anon_sym_excess] = ACTIONS(149),
    [anon_sym_ways] = ACTIONS(149),
    [anon_sym_coupled] = ACTIONS(149),
    [anon_sym_calibrated] = ACTIONS(149),
    [anon_sym_scale] = ACTIONS(149),
    [anon_sym_resolution] = ACTIONS(149),
    [anon_sym_due] = ACTIONS(149),
    [anon_sym_linearity] = ACTIONS(149),
    [anon_sym_repeatability] = ACTIONS(149),
    [anon_sym_directivity] = ACTIONS(149),
    [anon_sym_certificate] = ACTIONS(149),
    [anon_sym_load] = ACTIONS(149),
    [anon_sym_read] = ACTIONS(149),
    [anon_sym_temperature] = ACTIONS(149),
    [anon_sym_generator] = ACTIONS(149),
    [anon_sym_drift] = ACTIONS(149),
    [anon_sym_piece] = ACTIONS(149),
    [anon_sym_readings] = ACTIONS(149),
    [anon_sym_resonance] = ACTIONS(149),
    [anon_sym_delay] = ACTIONS(149),
    [anon_sym_phase] = ACTIONS(149),
    [anon_sym_adapter] = ACTIONS(149),
    [anon_sym_position] = ACTIONS(149),
    [anon_sym_ground] = ACTIONS(149),
    [anon_sym_place] = ACTIONS(149),
    [anon_sym_under] = ACTIONS(149),
    [anon_sym_beside] = ACTIONS(149),
    [anon_sym_spot] = ACTIONS(149),
    [anon_sym_alone] = ACTIONS(149),
    [anon_sym_site_DASHnoise] = ACTIONS(149),
    [anon_sym_transmitter] = ACTIONS(149),
    [anon_sym_receiver] = ACTIONS(149),
    [anon_sym_transceiver] = ACTIONS(149),
    [anon_sym_run] = ACTIONS(149),
    [anon_sym_jumper] = ACTIONS(149),
    [anon_sym_tail] = ACTIONS(149),
    [anon_sym_pad] = ACTIONS(149),
    [anon_sym_filter] = ACTIONS(149),
    [anon_sym_isolator] = ACTIONS(149),
    [anon_sym_circulator] = ACTIONS(149),
    [anon_sym_protector] = ACTIONS(149),
    [anon_sym_switch] = ACTIONS(149),
    [anon_sym_coupler] = ACTIONS(149),
    [anon_sym_meter] = ACTIONS(149),
    [anon_sym_balun] = ACTIONS(149),
    [anon_sym_tuner] = ACTIONS(149),
    [anon_sym_duplexer] = ACTIONS(149),
    [anon_sym_diplexer] = ACTIONS(149),
    [anon_sym_combiner] = ACTIONS(149),
    [anon_sym_divider] = ACTIONS(149),
    [anon_sym_amplifier] = ACTIONS(149),
    [anon_sym_preamplifier] = ACTIONS(149),
    [anon_sym_antenna] = ACTIONS(149),
    [anon_sym_branches] = ACTIONS(149),
    [anon_sym_expect] = ACTIONS(149),
    [anon_sym_authority] = ACTIONS(149),
    [anon_sym_jurisdiction] = ACTIONS(149),
    [anon_sym_service] = ACTIONS(149),
    [anon_sym_edition] = ACTIONS(149),
    [anon_sym_dated] = ACTIONS(149),
    [anon_sym_until] = ACTIONS(149),
    [anon_sym_holder] = ACTIONS(149),
    [anon_sym_class] = ACTIONS(149),
    [anon_sym_ask] = ACTIONS(149),
    [anon_sym_threshold] = ACTIONS(149),
    [anon_sym_fixed] = ACTIONS(149),
    [anon_sym_condition] = ACTIONS(149),
    [anon_sym_reflection] = ACTIONS(149),
    [anon_sym_field] = ACTIONS(149),
    [anon_sym_hop] = ACTIONS(149),
    [anon_sym_profile] = ACTIONS(149),
    [anon_sym_distance] = ACTIONS(149),
    [anon_sym_k_DASHfactor] = ACTIONS(149),
    [anon_sym_need] = ACTIONS(149),
    [anon_sym_model] = ACTIONS(149),
    [anon_sym_coverage] = ACTIONS(149),
    [anon_sym_take] = ACTIONS(149),
    [anon_sym_put] = ACTIONS(149),
    [anon_sym_branch] = ACTIONS(149),
    [anon_sym_inner] = ACTIONS(149),
    [anon_sym_outer] = ACTIONS(149),
    [anon_sym_permittivity] = ACTIONS(149),
    [anon_sym_loss_DASHtangent] = ACTIONS(149),
    [anon_sym_strand] = ACTIONS(149),
    [anon_sym_strand_DASHdiameter] = ACTIONS(149),
    [anon_sym_braid] = ACTIONS(149),
    [anon_sym_resistivity] = ACTIONS(149),
    [anon_sym_inner_DASHresistivity] = ACTIONS(149),
    [anon_sym_outer_DASHresistivity] = ACTIONS(149),
    [anon_sym_diameter] = ACTIONS(149),
    [anon_sym_spacing] = ACTIONS(149),
    [anon_sym_baseline] = ACTIONS(149),
    [anon_sym_through] = ACTIONS(149),
    [anon_sym_open] = ACTIONS(149),
    [anon_sym_short] = ACTIONS(149),
    [anon_sym_equalise] = ACTIONS(149),
    [anon_sym_power] = ACTIONS(149),
    [anon_sym_mode] = ACTIONS(149),
    [anon_sym_duty] = ACTIONS(149),
    [anon_sym_keyed] = ACTIONS(149),
    [anon_sym_foldback] = ACTIONS(149),
    [anon_sym_bandwidth] = ACTIONS(149),
    [anon_sym_sensitivity] = ACTIONS(149),
    [anon_sym_blocking] = ACTIONS(149),
    [anon_sym_efficiency] = ACTIONS(149),
    [anon_sym_height] = ACTIONS(149),
    [anon_sym_pattern] = ACTIONS(149),
    [anon_sym_haat] = ACTIONS(149),
    [anon_sym_radius] = ACTIONS(149),
    [anon_sym_fails] = ACTIONS(149),
    [anon_sym_GHz] = ACTIONS(149),
    [anon_sym_Hz] = ACTIONS(149),
    [anon_sym_MHz] = ACTIONS(149),
    [anon_sym_above] = ACTIONS(149),
    [anon_sym_added] = ACTIONS(149),
    [anon_sym_after] = ACTIONS(149),
    [anon_sym_against] = ACTIONS(149),
    [anon_sym_agl] = ACTIONS(149),
    [anon_sym_allocated] = ACTIONS(149),
    [anon_sym_am] = ACTIONS(149),
    [anon_sym_ambient] = ACTIONS(149),
    [anon_sym_amsl] = ACTIONS(149),
    [anon_sym_apart] = ACTIONS(149),
    [anon_sym_at] = ACTIONS(149),
    [anon_sym_averaging] = ACTIONS(149),
    [anon_sym_below] = ACTIONS(149),
    [anon_sym_beyond] = ACTIONS(149),
    [anon_sym_blank] = ACTIONS(149),
    [anon_sym_bow] = ACTIONS(149),
    [anon_sym_bullington] = ACTIONS(149),
    [anon_sym_by] = ACTIONS(149),
    [anon_sym_carrier] = ACTIONS(149),
    [anon_sym_cascade] = ACTIONS(149),
    [anon_sym_city] = ACTIONS(149),
    [anon_sym_clad] = ACTIONS(149),
    [anon_sym_confidence] = ACTIONS(149),
    [anon_sym_corrected] = ACTIONS(149),
    [anon_sym_cw] = ACTIONS(149),
    [anon_sym_dB] = ACTIONS(149),
    [anon_sym_dBW] = ACTIONS(149),
    [anon_sym_dBd] = ACTIONS(149),
    [anon_sym_dBi] = ACTIONS(149),
    [anon_sym_dBm] = ACTIONS(149),
    [anon_sym_data] = ACTIONS(149),
    [anon_sym_date] = ACTIONS(149),
    [anon_sym_datum] = ACTIONS(149),
    [anon_sym_dc_DASHinput] = ACTIONS(149),
    [anon_sym_degrees] = ACTIONS(149),
    [anon_sym_delivered] = ACTIONS(149),
    [anon_sym_desense] = ACTIONS(149),
    [anon_sym_displayed] = ACTIONS(149),
    [anon_sym_dms] = ACTIONS(149),
    [anon_sym_down] = ACTIONS(149),
    [anon_sym_eirp] = ACTIONS(149),
    [anon_sym_elevation] = ACTIONS(149),
    [anon_sym_ends] = ACTIONS(149),
    [anon_sym_erp] = ACTIONS(149),
    [anon_sym_etrs89] = ACTIONS(149),
    [anon_sym_figure] = ACTIONS(149),
    [anon_sym_fm] = ACTIONS(149),
    [anon_sym_for] = ACTIONS(149),
    [anon_sym_forward] = ACTIONS(149),
    [anon_sym_free_DASHspace] = ACTIONS(149),
    [anon_sym_frequency] = ACTIONS(149),
    [anon_sym_ft] = ACTIONS(149),
    [anon_sym_full] = ACTIONS(149),
    [anon_sym_guess] = ACTIONS(149),
    [anon_sym_hata_DASHopen] = ACTIONS(149),
    [anon_sym_hata_DASHsuburban] = ACTIONS(149),
    [anon_sym_hata_DASHurban] = ACTIONS(149),
    [anon_sym_height_DASHamsl] = ACTIONS(149),
    [anon_sym_horizontal] = ACTIONS(149),
    [anon_sym_if] = ACTIONS(149),
    [anon_sym_in] = ACTIONS(149),
    [anon_sym_input] = ACTIONS(149),
    [anon_sym_instead] = ACTIONS(149),
    [anon_sym_k] = ACTIONS(149),
    [anon_sym_kHz] = ACTIONS(149),
    [anon_sym_kW] = ACTIONS(149),
    [anon_sym_km] = ACTIONS(149),
    [anon_sym_latitude] = ACTIONS(149),
    [anon_sym_longitude] = ACTIONS(149),
    [anon_sym_m] = ACTIONS(149),
    [anon_sym_mW] = ACTIONS(149),
    [anon_sym_maximum] = ACTIONS(149),
    [anon_sym_mean] = ACTIONS(149),
    [anon_sym_medium] = ACTIONS(149),
    [anon_sym_nad27] = ACTIONS(149),
    [anon_sym_nad83] = ACTIONS(149),
    [anon_sym_net] = ACTIONS(149),
    [anon_sym_no] = ACTIONS(149),
    [anon_sym_nominal] = ACTIONS(149),
    [anon_sym_occupational] = ACTIONS(149),
    [anon_sym_of] = ACTIONS(149),
    [anon_sym_offset] = ACTIONS(149),
    [anon_sym_on] = ACTIONS(149),
    [anon_sym_one_DASHedge] = ACTIONS(149),
    [anon_sym_out] = ACTIONS(149),
    [anon_sym_output] = ACTIONS(149),
    [anon_sym_over] = ACTIONS(149),
    [anon_sym_pep] = ACTIONS(149),
    [anon_sym_per] = ACTIONS(149),
    [anon_sym_places] = ACTIONS(149),
    [anon_sym_public] = ACTIONS(149),
    [anon_sym_quiet_DASHrural] = ACTIONS(149),
    [anon_sym_quieting] = ACTIONS(149),
    [anon_sym_rated] = ACTIONS(149),
    [anon_sym_reactance] = ACTIONS(149),
    [anon_sym_reading] = ACTIONS(149),
    [anon_sym_realized] = ACTIONS(149),
    [anon_sym_receive_DASHfrequency] = ACTIONS(149),
    [anon_sym_receive_DASHloss] = ACTIONS(149),
    [anon_sym_reference] = ACTIONS(149),
    [anon_sym_reflected] = ACTIONS(149),
    [anon_sym_rejects] = ACTIONS(149),
    [anon_sym_residential] = ACTIONS(149),
    [anon_sym_rural] = ACTIONS(149),
    [anon_sym_series] = ACTIONS(149),
    [anon_sym_shared] = ACTIONS(149),
    [anon_sym_sheet] = ACTIONS(149),
    [anon_sym_shunt] = ACTIONS(149),
    [anon_sym_sinad] = ACTIONS(149),
    [anon_sym_since] = ACTIONS(149),
    [anon_sym_snr] = ACTIONS(149),
    [anon_sym_spread] = ACTIONS(149),
    [anon_sym_ssb] = ACTIONS(149),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(149),
    [anon_sym_then] = ACTIONS(149),
    [anon_sym_title] = ACTIONS(149),
    [anon_sym_to] = ACTIONS(149),
    [anon_sym_total] = ACTIONS(149),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(149),
    [anon_sym_two_DASHray] = ACTIONS(149),
    [anon_sym_typical] = ACTIONS(149),
    [anon_sym_up] = ACTIONS(149),
    [anon_sym_vertical] = ACTIONS(149),
    [anon_sym_way] = ACTIONS(149),
    [anon_sym_wet] = ACTIONS(149),
    [anon_sym_wgs84] = ACTIONS(149),
    [anon_sym_with] = ACTIONS(149),
    [anon_sym_within] = ACTIONS(149),
    [anon_sym_yes] = ACTIONS(149),
    [anon_sym_COMMA] = ACTIONS(147),
    [anon_sym_EQ] = ACTIONS(147),
    [anon_sym_LPAREN] = ACTIONS(147),
    [anon_sym_DASH] = ACTIONS(149),
    [anon_sym_u2212] = ACTIONS(149),
    [anon_sym_u2013] = ACTIONS(149),
    [anon_sym_PLUS] = ACTIONS(149),
    [anon_sym_STAR] = ACTIONS(147),
    [anon_sym_SLASH] = ACTIONS(149),
    [anon_sym_CARET] = ACTIONS(147),
    [sym__glued] = ACTIONS(149),
    [sym_date] = ACTIONS(149),
    [sym_dms] = ACTIONS(147),
    [sym_number] = ACTIONS(149),
    [sym_digit_name] = ACTIONS(149),
    [sym_string] = ACTIONS(147),
    [sym_comment] = ACTIONS(3),
  },
  [28] = {
    [ts_builtin_sym_end] = ACTIONS(23),
    [sym_name] = ACTIONS(25),
    [aux_sym__end_token1] = ACTIONS(23),
    [anon_sym_SEMI] = ACTIONS(23),
    [anon_sym_LBRACE] = ACTIONS(23),
    [anon_sym_RBRACE] = ACTIONS(23),
    [anon_sym_use] = ACTIONS(25),
    [anon_sym_band] = ACTIONS(25),
    [anon_sym_let] = ACTIONS(25),
    [anon_sym_cable] = ACTIONS(25),
    [anon_sym_connector] = ACTIONS(25),
    [anon_sym_device] = ACTIONS(25),
    [anon_sym_instrument] = ACTIONS(25),
    [anon_sym_session] = ACTIONS(25),
    [anon_sym_station] = ACTIONS(25),
    [anon_sym_chain] = ACTIONS(25),
    [anon_sym_licence] = ACTIONS(25),
    [anon_sym_rules] = ACTIONS(25),
    [anon_sym_link] = ACTIONS(25),
    [anon_sym_variant] = ACTIONS(25),
    [anon_sym_accept] = ACTIONS(25),
    [anon_sym_transmit] = ACTIONS(25),
    [anon_sym_receive] = ACTIONS(25),
    [anon_sym_impedance] = ACTIONS(25),
    [anon_sym_velocity] = ACTIONS(25),
    [anon_sym_loss] = ACTIONS(25),
    [anon_sym_construction] = ACTIONS(25),
    [anon_sym_wires] = ACTIONS(25),
    [anon_sym_valid] = ACTIONS(25),
    [anon_sym_accuracy] = ACTIONS(25),
    [anon_sym_rating] = ACTIONS(25),
    [anon_sym_voltage] = ACTIONS(25),
    [anon_sym_size] = ACTIONS(25),
    [anon_sym_conductor] = ACTIONS(25),
    [anon_sym_source] = ACTIONS(25),
    [anon_sym_recalled] = ACTIONS(25),
    [anon_sym_joins] = ACTIONS(25),
    [anon_sym_limit] = ACTIONS(25),
    [anon_sym_family] = ACTIONS(25),
    [anon_sym_bump] = ACTIONS(25),
    [anon_sym_return_DASHloss] = ACTIONS(25),
    [anon_sym_swr] = ACTIONS(25),
    [anon_sym_kind] = ACTIONS(25),
    [anon_sym_high] = ACTIONS(25),
    [anon_sym_low] = ACTIONS(25),
    [anon_sym_port] = ACTIONS(25),
    [anon_sym_from] = ACTIONS(25),
    [anon_sym_isolation] = ACTIONS(25),
    [anon_sym_ratio] = ACTIONS(25),
    [anon_sym_split] = ACTIONS(25),
    [anon_sym_tee] = ACTIONS(25),
    [anon_sym_reversed] = ACTIONS(25),
    [anon_sym_passes] = ACTIONS(25),
    [anon_sym_gain] = ACTIONS(25),
    [anon_sym_noise] = ACTIONS(25),
    [anon_sym_excess] = ACTIONS(25),
    [anon_sym_ways] = ACTIONS(25),
    [anon_sym_coupled] = ACTIONS(25),
    [anon_sym_calibrated] = ACTIONS(25),
    [anon_sym_scale] = ACTIONS(25),
    [anon_sym_resolution] = ACTIONS(25),
    [anon_sym_due] = ACTIONS(25),
    [anon_sym_linearity] = ACTIONS(25),
    [anon_sym_repeatability] = ACTIONS(25),
    [anon_sym_directivity] = ACTIONS(25),
    [anon_sym_certificate] = ACTIONS(25),
    [anon_sym_load] = ACTIONS(25),
    [anon_sym_read] = ACTIONS(25),
    [anon_sym_temperature] = ACTIONS(25),
    [anon_sym_generator] = ACTIONS(25),
    [anon_sym_drift] = ACTIONS(25),
    [anon_sym_piece] = ACTIONS(25),
    [anon_sym_readings] = ACTIONS(25),
    [anon_sym_resonance] = ACTIONS(25),
    [anon_sym_delay] = ACTIONS(25),
    [anon_sym_phase] = ACTIONS(25),
    [anon_sym_adapter] = ACTIONS(25),
    [anon_sym_position] = ACTIONS(25),
    [anon_sym_ground] = ACTIONS(25),
    [anon_sym_place] = ACTIONS(25),
    [anon_sym_under] = ACTIONS(25),
    [anon_sym_beside] = ACTIONS(25),
    [anon_sym_spot] = ACTIONS(25),
    [anon_sym_alone] = ACTIONS(25),
    [anon_sym_site_DASHnoise] = ACTIONS(25),
    [anon_sym_transmitter] = ACTIONS(25),
    [anon_sym_receiver] = ACTIONS(25),
    [anon_sym_transceiver] = ACTIONS(25),
    [anon_sym_run] = ACTIONS(25),
    [anon_sym_jumper] = ACTIONS(25),
    [anon_sym_tail] = ACTIONS(25),
    [anon_sym_pad] = ACTIONS(25),
    [anon_sym_filter] = ACTIONS(25),
    [anon_sym_isolator] = ACTIONS(25),
    [anon_sym_circulator] = ACTIONS(25),
    [anon_sym_protector] = ACTIONS(25),
    [anon_sym_switch] = ACTIONS(25),
    [anon_sym_coupler] = ACTIONS(25),
    [anon_sym_meter] = ACTIONS(25),
    [anon_sym_balun] = ACTIONS(25),
    [anon_sym_tuner] = ACTIONS(25),
    [anon_sym_duplexer] = ACTIONS(25),
    [anon_sym_diplexer] = ACTIONS(25),
    [anon_sym_combiner] = ACTIONS(25),
    [anon_sym_divider] = ACTIONS(25),
    [anon_sym_amplifier] = ACTIONS(25),
    [anon_sym_preamplifier] = ACTIONS(25),
    [anon_sym_antenna] = ACTIONS(25),
    [anon_sym_branches] = ACTIONS(25),
    [anon_sym_expect] = ACTIONS(25),
    [anon_sym_authority] = ACTIONS(25),
    [anon_sym_jurisdiction] = ACTIONS(25),
    [anon_sym_service] = ACTIONS(25),
    [anon_sym_edition] = ACTIONS(25),
    [anon_sym_dated] = ACTIONS(25),
    [anon_sym_until] = ACTIONS(25),
    [anon_sym_holder] = ACTIONS(25),
    [anon_sym_class] = ACTIONS(25),
    [anon_sym_ask] = ACTIONS(25),
    [anon_sym_threshold] = ACTIONS(25),
    [anon_sym_fixed] = ACTIONS(25),
    [anon_sym_condition] = ACTIONS(25),
    [anon_sym_reflection] = ACTIONS(25),
    [anon_sym_field] = ACTIONS(25),
    [anon_sym_hop] = ACTIONS(25),
    [anon_sym_profile] = ACTIONS(25),
    [anon_sym_distance] = ACTIONS(25),
    [anon_sym_k_DASHfactor] = ACTIONS(25),
    [anon_sym_need] = ACTIONS(25),
    [anon_sym_model] = ACTIONS(25),
    [anon_sym_coverage] = ACTIONS(25),
    [anon_sym_take] = ACTIONS(25),
    [anon_sym_put] = ACTIONS(25),
    [anon_sym_branch] = ACTIONS(25),
    [anon_sym_inner] = ACTIONS(25),
    [anon_sym_outer] = ACTIONS(25),
    [anon_sym_permittivity] = ACTIONS(25),
    [anon_sym_loss_DASHtangent] = ACTIONS(25),
    [anon_sym_strand] = ACTIONS(25),
    [anon_sym_strand_DASHdiameter] = ACTIONS(25),
    [anon_sym_braid] = ACTIONS(25),
    [anon_sym_resistivity] = ACTIONS(25),
    [anon_sym_inner_DASHresistivity] = ACTIONS(25),
    [anon_sym_outer_DASHresistivity] = ACTIONS(25),
    [anon_sym_diameter] = ACTIONS(25),
    [anon_sym_spacing] = ACTIONS(25),
    [anon_sym_baseline] = ACTIONS(25),
    [anon_sym_through] = ACTIONS(25),
    [anon_sym_open] = ACTIONS(25),
    [anon_sym_short] = ACTIONS(25),
    [anon_sym_equalise] = ACTIONS(25),
    [anon_sym_power] = ACTIONS(25),
    [anon_sym_mode] = ACTIONS(25),
    [anon_sym_duty] = ACTIONS(25),
    [anon_sym_keyed] = ACTIONS(25),
    [anon_sym_foldback] = ACTIONS(25),
    [anon_sym_bandwidth] = ACTIONS(25),
    [anon_sym_sensitivity] = ACTIONS(25),
    [anon_sym_blocking] = ACTIONS(25),
    [anon_sym_efficiency] = ACTIONS(25),
    [anon_sym_height] = ACTIONS(25),
    [anon_sym_pattern] = ACTIONS(25),
    [anon_sym_haat] = ACTIONS(25),
    [anon_sym_radius] = ACTIONS(25),
    [anon_sym_fails] = ACTIONS(25),
    [anon_sym_GHz] = ACTIONS(25),
    [anon_sym_Hz] = ACTIONS(25),
    [anon_sym_MHz] = ACTIONS(25),
    [anon_sym_above] = ACTIONS(25),
    [anon_sym_added] = ACTIONS(25),
    [anon_sym_after] = ACTIONS(25),
    [anon_sym_against] = ACTIONS(25),
    [anon_sym_agl] = ACTIONS(25),
    [anon_sym_allocated] = ACTIONS(25),
    [anon_sym_am] = ACTIONS(25),
    [anon_sym_ambient] = ACTIONS(25),
    [anon_sym_amsl] = ACTIONS(25),
    [anon_sym_apart] = ACTIONS(25),
    [anon_sym_at] = ACTIONS(25),
    [anon_sym_averaging] = ACTIONS(25),
    [anon_sym_below] = ACTIONS(25),
    [anon_sym_beyond] = ACTIONS(25),
    [anon_sym_blank] = ACTIONS(25),
    [anon_sym_bow] = ACTIONS(25),
    [anon_sym_bullington] = ACTIONS(25),
    [anon_sym_by] = ACTIONS(25),
    [anon_sym_carrier] = ACTIONS(25),
    [anon_sym_cascade] = ACTIONS(25),
    [anon_sym_city] = ACTIONS(25),
    [anon_sym_clad] = ACTIONS(25),
    [anon_sym_confidence] = ACTIONS(25),
    [anon_sym_corrected] = ACTIONS(25),
    [anon_sym_cw] = ACTIONS(25),
    [anon_sym_dB] = ACTIONS(25),
    [anon_sym_dBW] = ACTIONS(25),
    [anon_sym_dBd] = ACTIONS(25),
    [anon_sym_dBi] = ACTIONS(25),
    [anon_sym_dBm] = ACTIONS(25),
    [anon_sym_data] = ACTIONS(25),
    [anon_sym_date] = ACTIONS(25),
    [anon_sym_datum] = ACTIONS(25),
    [anon_sym_dc_DASHinput] = ACTIONS(25),
    [anon_sym_degrees] = ACTIONS(25),
    [anon_sym_delivered] = ACTIONS(25),
    [anon_sym_desense] = ACTIONS(25),
    [anon_sym_displayed] = ACTIONS(25),
    [anon_sym_dms] = ACTIONS(25),
    [anon_sym_down] = ACTIONS(25),
    [anon_sym_eirp] = ACTIONS(25),
    [anon_sym_elevation] = ACTIONS(25),
    [anon_sym_ends] = ACTIONS(25),
    [anon_sym_erp] = ACTIONS(25),
    [anon_sym_etrs89] = ACTIONS(25),
    [anon_sym_figure] = ACTIONS(25),
    [anon_sym_fm] = ACTIONS(25),
    [anon_sym_for] = ACTIONS(25),
    [anon_sym_forward] = ACTIONS(25),
    [anon_sym_free_DASHspace] = ACTIONS(25),
    [anon_sym_frequency] = ACTIONS(25),
    [anon_sym_ft] = ACTIONS(25),
    [anon_sym_full] = ACTIONS(25),
    [anon_sym_guess] = ACTIONS(25),
    [anon_sym_hata_DASHopen] = ACTIONS(25),
    [anon_sym_hata_DASHsuburban] = ACTIONS(25),
    [anon_sym_hata_DASHurban] = ACTIONS(25),
    [anon_sym_height_DASHamsl] = ACTIONS(25),
    [anon_sym_horizontal] = ACTIONS(25),
    [anon_sym_if] = ACTIONS(25),
    [anon_sym_in] = ACTIONS(25),
    [anon_sym_input] = ACTIONS(25),
    [anon_sym_instead] = ACTIONS(25),
    [anon_sym_k] = ACTIONS(25),
    [anon_sym_kHz] = ACTIONS(25),
    [anon_sym_kW] = ACTIONS(25),
    [anon_sym_km] = ACTIONS(25),
    [anon_sym_latitude] = ACTIONS(25),
    [anon_sym_longitude] = ACTIONS(25),
    [anon_sym_m] = ACTIONS(25),
    [anon_sym_mW] = ACTIONS(25),
    [anon_sym_maximum] = ACTIONS(25),
    [anon_sym_mean] = ACTIONS(25),
    [anon_sym_medium] = ACTIONS(25),
    [anon_sym_nad27] = ACTIONS(25),
    [anon_sym_nad83] = ACTIONS(25),
    [anon_sym_net] = ACTIONS(25),
    [anon_sym_no] = ACTIONS(25),
    [anon_sym_nominal] = ACTIONS(25),
    [anon_sym_occupational] = ACTIONS(25),
    [anon_sym_of] = ACTIONS(25),
    [anon_sym_offset] = ACTIONS(25),
    [anon_sym_on] = ACTIONS(25),
    [anon_sym_one_DASHedge] = ACTIONS(25),
    [anon_sym_out] = ACTIONS(25),
    [anon_sym_output] = ACTIONS(25),
    [anon_sym_over] = ACTIONS(25),
    [anon_sym_pep] = ACTIONS(25),
    [anon_sym_per] = ACTIONS(25),
    [anon_sym_places] = ACTIONS(25),
    [anon_sym_public] = ACTIONS(25),
    [anon_sym_quiet_DASHrural] = ACTIONS(25),
    [anon_sym_quieting] = ACTIONS(25),
    [anon_sym_rated] = ACTIONS(25),
    [anon_sym_reactance] = ACTIONS(25),
    [anon_sym_reading] = ACTIONS(25),
    [anon_sym_realized] = ACTIONS(25),
    [anon_sym_receive_DASHfrequency] = ACTIONS(25),
    [anon_sym_receive_DASHloss] = ACTIONS(25),
    [anon_sym_reference] = ACTIONS(25),
    [anon_sym_reflected] = ACTIONS(25),
    [anon_sym_rejects] = ACTIONS(25),
    [anon_sym_residential] = ACTIONS(25),
    [anon_sym_rural] = ACTIONS(25),
    [anon_sym_series] = ACTIONS(25),
    [anon_sym_shared] = ACTIONS(25),
    [anon_sym_sheet] = ACTIONS(25),
    [anon_sym_shunt] = ACTIONS(25),
    [anon_sym_sinad] = ACTIONS(25),
    [anon_sym_since] = ACTIONS(25),
    [anon_sym_snr] = ACTIONS(25),
    [anon_sym_spread] = ACTIONS(25),
    [anon_sym_ssb] = ACTIONS(25),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(25),
    [anon_sym_then] = ACTIONS(25),
    [anon_sym_title] = ACTIONS(25),
    [anon_sym_to] = ACTIONS(25),
    [anon_sym_total] = ACTIONS(25),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(25),
    [anon_sym_two_DASHray] = ACTIONS(25),
    [anon_sym_typical] = ACTIONS(25),
    [anon_sym_up] = ACTIONS(25),
    [anon_sym_vertical] = ACTIONS(25),
    [anon_sym_way] = ACTIONS(25),
    [anon_sym_wet] = ACTIONS(25),
    [anon_sym_wgs84] = ACTIONS(25),
    [anon_sym_with] = ACTIONS(25),
    [anon_sym_within] = ACTIONS(25),
    [anon_sym_yes] = ACTIONS(25),
    [anon_sym_COMMA] = ACTIONS(23),
    [anon_sym_EQ] = ACTIONS(23),
    [anon_sym_LPAREN] = ACTIONS(23),
    [anon_sym_DASH] = ACTIONS(25),
    [anon_sym_u2212] = ACTIONS(25),
    [anon_sym_u2013] = ACTIONS(25),
    [anon_sym_PLUS] = ACTIONS(25),
    [anon_sym_STAR] = ACTIONS(23),
    [anon_sym_SLASH] = ACTIONS(25),
    [anon_sym_CARET] = ACTIONS(23),
    [sym__glued] = ACTIONS(25),
    [sym_date] = ACTIONS(25),
    [sym_dms] = ACTIONS(23),
    [sym_number] = ACTIONS(25),
    [sym_digit_name] = ACTIONS(25),
    [sym_string] = ACTIONS(23),
    [sym_comment] = ACTIONS(3),
  },
  [29] = {
    [ts_builtin_sym_end] = ACTIONS(141),
    [sym_name] = ACTIONS(143),
    [aux_sym__end_token1] = ACTIONS(141),
    [anon_sym_SEMI] = ACTIONS(141),
    [anon_sym_LBRACE] = ACTIONS(141),
    [anon_sym_RBRACE] = ACTIONS(141),
    [anon_sym_use] = ACTIONS(143),
    [anon_sym_band] = ACTIONS(143),
    [anon_sym_let] = ACTIONS(143),
    [anon_sym_cable] = ACTIONS(143),
    [anon_sym_connector] = ACTIONS(143),
    [anon_sym_device] = ACTIONS(143),
    [anon_sym_instrument] = ACTIONS(143),
    [anon_sym_session] = ACTIONS(143),
    [anon_sym_station] = ACTIONS(143),
    [anon_sym_chain] = ACTIONS(143),
    [anon_sym_licence] = ACTIONS(143),
    [anon_sym_rules] = ACTIONS(143),
    [anon_sym_link] = ACTIONS(143),
    [anon_sym_variant] = ACTIONS(143),
    [anon_sym_accept] = ACTIONS(143),
    [anon_sym_transmit] = ACTIONS(143),
    [anon_sym_receive] = ACTIONS(143),
    [anon_sym_impedance] = ACTIONS(143),
    [anon_sym_velocity] = ACTIONS(143),
    [anon_sym_loss] = ACTIONS(143),
    [anon_sym_construction] = ACTIONS(143),
    [anon_sym_wires] = ACTIONS(143),
    [anon_sym_valid] = ACTIONS(143),
    [anon_sym_accuracy] = ACTIONS(143),
    [anon_sym_rating] = ACTIONS(143),
    [anon_sym_voltage] = ACTIONS(143),
    [anon_sym_size] = ACTIONS(143),
    [anon_sym_conductor] = ACTIONS(143),
    [anon_sym_source] = ACTIONS(143),
    [anon_sym_recalled] = ACTIONS(143),
    [anon_sym_joins] = ACTIONS(143),
    [anon_sym_limit] = ACTIONS(143),
    [anon_sym_family] = ACTIONS(143),
    [anon_sym_bump] = ACTIONS(143),
    [anon_sym_return_DASHloss] = ACTIONS(143),
    [anon_sym_swr] = ACTIONS(143),
    [anon_sym_kind] = ACTIONS(143),
    [anon_sym_high] = ACTIONS(143),
    [anon_sym_low] = ACTIONS(143),
    [anon_sym_port] = ACTIONS(143),
    [anon_sym_from] = ACTIONS(143),
    [anon_sym_isolation] = ACTIONS(143),
    [anon_sym_ratio] = ACTIONS(143),
    [anon_sym_split] = ACTIONS(143),
    [anon_sym_tee] = ACTIONS(143),
    [anon_sym_reversed] = ACTIONS(143),
    [anon_sym_passes] = ACTIONS(143),
    [anon_sym_gain] = ACTIONS(143),
    [anon_sym_noise] = ACTIONS(143),
    [anon_sym_excess] = ACTIONS(143),
    [anon_sym_ways] = ACTIONS(143),
    [anon_sym_coupled] = ACTIONS(143),
    [anon_sym_calibrated] = ACTIONS(143),
    [anon_sym_scale] = ACTIONS(143),
    [anon_sym_resolution] = ACTIONS(143),
    [anon_sym_due] = ACTIONS(143),
    [anon_sym_linearity] = ACTIONS(143),
    [anon_sym_repeatability] = ACTIONS(143),
    [anon_sym_directivity] = ACTIONS(143),
    [anon_sym_certificate] = ACTIONS(143),
    [anon_sym_load] = ACTIONS(143),
    [anon_sym_read] = ACTIONS(143),
    [anon_sym_temperature] = ACTIONS(143),
    [anon_sym_generator] = ACTIONS(143),
    [anon_sym_drift] = ACTIONS(143),
    [anon_sym_piece] = ACTIONS(143),
    [anon_sym_readings] = ACTIONS(143),
    [anon_sym_resonance] = ACTIONS(143),
    [anon_sym_delay] = ACTIONS(143),
    [anon_sym_phase] = ACTIONS(143),
    [anon_sym_adapter] = ACTIONS(143),
    [anon_sym_position] = ACTIONS(143),
    [anon_sym_ground] = ACTIONS(143),
    [anon_sym_place] = ACTIONS(143),
    [anon_sym_under] = ACTIONS(143),
    [anon_sym_beside] = ACTIONS(143),
    [anon_sym_spot] = ACTIONS(143),
    [anon_sym_alone] = ACTIONS(143),
    [anon_sym_site_DASHnoise] = ACTIONS(143),
    [anon_sym_transmitter] = ACTIONS(143),
    [anon_sym_receiver] = ACTIONS(143),
    [anon_sym_transceiver] = ACTIONS(143),
    [anon_sym_run] = ACTIONS(143),
    [anon_sym_jumper] = ACTIONS(143),
    [anon_sym_tail] = ACTIONS(143),
    [anon_sym_pad] = ACTIONS(143),
    [anon_sym_filter] = ACTIONS(143),
    [anon_sym_isolator] = ACTIONS(143),
    [anon_sym_circulator] = ACTIONS(143),
    [anon_sym_protector] = ACTIONS(143),
    [anon_sym_switch] = ACTIONS(143),
    [anon_sym_coupler] = ACTIONS(143),
    [anon_sym_meter] = ACTIONS(143),
    [anon_sym_balun] = ACTIONS(143),
    [anon_sym_tuner] = ACTIONS(143),
    [anon_sym_duplexer] = ACTIONS(143),
    [anon_sym_diplexer] = ACTIONS(143),
    [anon_sym_combiner] = ACTIONS(143),
    [anon_sym_divider] = ACTIONS(143),
    [anon_sym_amplifier] = ACTIONS(143),
    [anon_sym_preamplifier] = ACTIONS(143),
    [anon_sym_antenna] = ACTIONS(143),
    [anon_sym_branches] = ACTIONS(143),
    [anon_sym_expect] = ACTIONS(143),
    [anon_sym_authority] = ACTIONS(143),
    [anon_sym_jurisdiction] = ACTIONS(143),
    [anon_sym_service] = ACTIONS(143),
    [anon_sym_edition] = ACTIONS(143),
    [anon_sym_dated] = ACTIONS(143),
    [anon_sym_until] = ACTIONS(143),
    [anon_sym_holder] = ACTIONS(143),
    [anon_sym_class] = ACTIONS(143),
    [anon_sym_ask] = ACTIONS(143),
    [anon_sym_threshold] = ACTIONS(143),
    [anon_sym_fixed] = ACTIONS(143),
    [anon_sym_condition] = ACTIONS(143),
    [anon_sym_reflection] = ACTIONS(143),
    [anon_sym_field] = ACTIONS(143),
    [anon_sym_hop] = ACTIONS(143),
    [anon_sym_profile] = ACTIONS(143),
    [anon_sym_distance] = ACTIONS(143),
    [anon_sym_k_DASHfactor] = ACTIONS(143),
    [anon_sym_need] = ACTIONS(143),
    [anon_sym_model] = ACTIONS(143),
    [anon_sym_coverage] = ACTIONS(143),
    [anon_sym_take] = ACTIONS(143),
    [anon_sym_put] = ACTIONS(143),
    [anon_sym_branch] = ACTIONS(143),
    [anon_sym_inner] = ACTIONS(143),
    [anon_sym_outer] = ACTIONS(143),
    [anon_sym_permittivity] = ACTIONS(143),
    [anon_sym_loss_DASHtangent] = ACTIONS(143),
    [anon_sym_strand] = ACTIONS(143),
    [anon_sym_strand_DASHdiameter] = ACTIONS(143),
    [anon_sym_braid] = ACTIONS(143),
    [anon_sym_resistivity] = ACTIONS(143),
    [anon_sym_inner_DASHresistivity] = ACTIONS(143),
    [anon_sym_outer_DASHresistivity] = ACTIONS(143),
    [anon_sym_diameter] = ACTIONS(143),
    [anon_sym_spacing] = ACTIONS(143),
    [anon_sym_baseline] = ACTIONS(143),
    [anon_sym_through] = ACTIONS(143),
    [anon_sym_open] = ACTIONS(143),
    [anon_sym_short] = ACTIONS(143),
    [anon_sym_equalise] = ACTIONS(143),
    [anon_sym_power] = ACTIONS(143),
    [anon_sym_mode] = ACTIONS(143),
    [anon_sym_duty] = ACTIONS(143),
    [anon_sym_keyed] = ACTIONS(143),
    [anon_sym_foldback] = ACTIONS(143),
    [anon_sym_bandwidth] = ACTIONS(143),
    [anon_sym_sensitivity] = ACTIONS(143),
    [anon_sym_blocking] = ACTIONS(143),
    [anon_sym_efficiency] = ACTIONS(143),
    [anon_sym_height] = ACTIONS(143),
    [anon_sym_pattern] = ACTIONS(143),
    [anon_sym_haat] = ACTIONS(143),
    [anon_sym_radius] = ACTIONS(143),
    [anon_sym_fails] = ACTIONS(143),
    [anon_sym_GHz] = ACTIONS(143),
    [anon_sym_Hz] = ACTIONS(143),
    [anon_sym_MHz] = ACTIONS(143),
    [anon_sym_above] = ACTIONS(143),
    [anon_sym_added] = ACTIONS(143),
    [anon_sym_after] = ACTIONS(143),
    [anon_sym_against] = ACTIONS(143),
    [anon_sym_agl] = ACTIONS(143),
    [anon_sym_allocated] = ACTIONS(143),
    [anon_sym_am] = ACTIONS(143),
    [anon_sym_ambient] = ACTIONS(143),
    [anon_sym_amsl] = ACTIONS(143),
    [anon_sym_apart] = ACTIONS(143),
    [anon_sym_at] = ACTIONS(143),
    [anon_sym_averaging] = ACTIONS(143),
    [anon_sym_below] = ACTIONS(143),
    [anon_sym_beyond] = ACTIONS(143),
    [anon_sym_blank] = ACTIONS(143),
    [anon_sym_bow] = ACTIONS(143),
    [anon_sym_bullington] = ACTIONS(143),
    [anon_sym_by] = ACTIONS(143),
    [anon_sym_carrier] = ACTIONS(143),
    [anon_sym_cascade] = ACTIONS(143),
    [anon_sym_city] = ACTIONS(143),
    [anon_sym_clad] = ACTIONS(143),
    [anon_sym_confidence] = ACTIONS(143),
    [anon_sym_corrected] = ACTIONS(143),
    [anon_sym_cw] = ACTIONS(143),
    [anon_sym_dB] = ACTIONS(143),
    [anon_sym_dBW] = ACTIONS(143),
    [anon_sym_dBd] = ACTIONS(143),
    [anon_sym_dBi] = ACTIONS(143),
    [anon_sym_dBm] = ACTIONS(143),
    [anon_sym_data] = ACTIONS(143),
    [anon_sym_date] = ACTIONS(143),
    [anon_sym_datum] = ACTIONS(143),
    [anon_sym_dc_DASHinput] = ACTIONS(143),
    [anon_sym_degrees] = ACTIONS(143),
    [anon_sym_delivered] = ACTIONS(143),
    [anon_sym_desense] = ACTIONS(143),
    [anon_sym_displayed] = ACTIONS(143),
    [anon_sym_dms] = ACTIONS(143),
    [anon_sym_down] = ACTIONS(143),
    [anon_sym_eirp] = ACTIONS(143),
    [anon_sym_elevation] = ACTIONS(143),
    [anon_sym_ends] = ACTIONS(143),
    [anon_sym_erp] = ACTIONS(143),
    [anon_sym_etrs89] = ACTIONS(143),
    [anon_sym_figure] = ACTIONS(143),
    [anon_sym_fm] = ACTIONS(143),
    [anon_sym_for] = ACTIONS(143),
    [anon_sym_forward] = ACTIONS(143),
    [anon_sym_free_DASHspace] = ACTIONS(143),
    [anon_sym_frequency] = ACTIONS(143),
    [anon_sym_ft] = ACTIONS(143),
    [anon_sym_full] = ACTIONS(143),
    [anon_sym_guess] = ACTIONS(143),
    [anon_sym_hata_DASHopen] = ACTIONS(143),
    [anon_sym_hata_DASHsuburban] = ACTIONS(143),
    [anon_sym_hata_DASHurban] = ACTIONS(143),
    [anon_sym_height_DASHamsl] = ACTIONS(143),
    [anon_sym_horizontal] = ACTIONS(143),
    [anon_sym_if] = ACTIONS(143),
    [anon_sym_in] = ACTIONS(143),
    [anon_sym_input] = ACTIONS(143),
    [anon_sym_instead] = ACTIONS(143),
    [anon_sym_k] = ACTIONS(143),
    [anon_sym_kHz] = ACTIONS(143),
    [anon_sym_kW] = ACTIONS(143),
    [anon_sym_km] = ACTIONS(143),
    [anon_sym_latitude] = ACTIONS(143),
    [anon_sym_longitude] = ACTIONS(143),
    [anon_sym_m] = ACTIONS(143),
    [anon_sym_mW] = ACTIONS(143),
    [anon_sym_maximum] = ACTIONS(143),
    [anon_sym_mean] = ACTIONS(143),
    [anon_sym_medium] = ACTIONS(143),
    [anon_sym_nad27] = ACTIONS(143),
    [anon_sym_nad83] = ACTIONS(143),
    [anon_sym_net] = ACTIONS(143),
    [anon_sym_no] = ACTIONS(143),
    [anon_sym_nominal] = ACTIONS(143),
    [anon_sym_occupational] = ACTIONS(143),
    [anon_sym_of] = ACTIONS(143),
    [anon_sym_offset] = ACTIONS(143),
    [anon_sym_on] = ACTIONS(143),
    [anon_sym_one_DASHedge] = ACTIONS(143),
    [anon_sym_out] = ACTIONS(143),
    [anon_sym_output] = ACTIONS(143),
    [anon_sym_over] = ACTIONS(143),
    [anon_sym_pep] = ACTIONS(143),
    [anon_sym_per] = ACTIONS(175),
    [anon_sym_places] = ACTIONS(143),
    [anon_sym_public] = ACTIONS(143),
    [anon_sym_quiet_DASHrural] = ACTIONS(143),
    [anon_sym_quieting] = ACTIONS(143),
    [anon_sym_rated] = ACTIONS(143),
    [anon_sym_reactance] = ACTIONS(143),
    [anon_sym_reading] = ACTIONS(143),
    [anon_sym_realized] = ACTIONS(143),
    [anon_sym_receive_DASHfrequency] = ACTIONS(143),
    [anon_sym_receive_DASHloss] = ACTIONS(143),
    [anon_sym_reference] = ACTIONS(143),
    [anon_sym_reflected] = ACTIONS(143),
    [anon_sym_rejects] = ACTIONS(143),
    [anon_sym_residential] = ACTIONS(143),
    [anon_sym_rural] = ACTIONS(143),
    [anon_sym_series] = ACTIONS(143),
    [anon_sym_shared] = ACTIONS(143),
    [anon_sym_sheet] = ACTIONS(143),
    [anon_sym_shunt] = ACTIONS(143),
    [anon_sym_sinad] = ACTIONS(143),
    [anon_sym_since] = ACTIONS(143),
    [anon_sym_snr] = ACTIONS(143),
    [anon_sym_spread] = ACTIONS(143),
    [anon_sym_ssb] = ACTIONS(143),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(143),
    [anon_sym_then] = ACTIONS(143),
    [anon_sym_title] = ACTIONS(143),
    [anon_sym_to] = ACTIONS(143),
    [anon_sym_total] = ACTIONS(143),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(143),
    [anon_sym_two_DASHray] = ACTIONS(143),
    [anon_sym_typical] = ACTIONS(143),
    [anon_sym_up] = ACTIONS(143),
    [anon_sym_vertical] = ACTIONS(143),
    [anon_sym_way] = ACTIONS(143),
    [anon_sym_wet] = ACTIONS(143),
    [anon_sym_wgs84] = ACTIONS(143),
    [anon_sym_with] = ACTIONS(143),
    [anon_sym_within] = ACTIONS(143),
    [anon_sym_yes] = ACTIONS(143),
    [anon_sym_COMMA] = ACTIONS(141),
    [anon_sym_EQ] = ACTIONS(141),
    [anon_sym_LPAREN] = ACTIONS(141),
    [anon_sym_DASH] = ACTIONS(143),
    [anon_sym_u2212] = ACTIONS(143),
    [anon_sym_u2013] = ACTIONS(143),
    [anon_sym_PLUS] = ACTIONS(143),
    [anon_sym_STAR] = ACTIONS(141),
    [anon_sym_SLASH] = ACTIONS(143),
    [anon_sym_CARET] = ACTIONS(141),
    [sym__glued] = ACTIONS(143),
    [sym_date] = ACTIONS(143),
    [sym_dms] = ACTIONS(141),
    [sym_number] = ACTIONS(143),
    [sym_digit_name] = ACTIONS(143),
    [sym_string] = ACTIONS(141),
    [sym_comment] = ACTIONS(3),
  },
  [30] = {
    [ts_builtin_sym_end] = ACTIONS(137),
    [sym_name] = ACTIONS(139),
    [aux_sym__end_token1] = ACTIONS(137),
    [anon_sym_SEMI] = ACTIONS(137),
    [anon_sym_LBRACE] = ACTIONS(137),
    [anon_sym_RBRACE] = ACTIONS(137),
    [anon_sym_use] = ACTIONS(139),
    [anon_sym_band] = ACTIONS(139),
    [anon_sym_let] = ACTIONS(139),
    [anon_sym_cable] = ACTIONS(139),
    [anon_sym_connector] = ACTIONS(139),
    [anon_sym_device] = ACTIONS(139),
    [anon_sym_instrument] = ACTIONS(139),
    [anon_sym_session] = ACTIONS(139),
    [anon_sym_station] = ACTIONS(139),
    [anon_sym_chain] = ACTIONS(139),
    [anon_sym_licence] = ACTIONS(139),
    [anon_sym_rules] = ACTIONS(139),
    [anon_sym_link] = ACTIONS(139),
    [anon_sym_variant] = ACTIONS(139),
    [anon_sym_accept] = ACTIONS(139),
    [anon_sym_transmit] = ACTIONS(139),
    [anon_sym_receive] = ACTIONS(139),
    [anon_sym_impedance] = ACTIONS(139),
    [anon_sym_velocity] = ACTIONS(139),
    [anon_sym_loss] = ACTIONS(139),
    [anon_sym_construction] = ACTIONS(139),
    [anon_sym_wires] = ACTIONS(139),
    [anon_sym_valid] = ACTIONS(139),
    [anon_sym_accuracy] = ACTIONS(139),
    [anon_sym_rating] = ACTIONS(139),
    [anon_sym_voltage] = ACTIONS(139),
    [anon_sym_size] = ACTIONS(139),
    [anon_sym_conductor] = ACTIONS(139),
    [anon_sym_source] = ACTIONS(139),
    [anon_sym_recalled] = ACTIONS(139),
    [anon_sym_joins] = ACTIONS(139),
    [anon_sym_limit] = ACTIONS(139),
    [anon_sym_family] = ACTIONS(139),
    [anon_sym_bump] = ACTIONS(139),
    [anon_sym_return_DASHloss] = ACTIONS(139),
    [anon_sym_swr] = ACTIONS(139),
    [anon_sym_kind] = ACTIONS(139),
    [anon_sym_high] = ACTIONS(139),
    [anon_sym_low] = ACTIONS(139),
    [anon_sym_port] = ACTIONS(139),
    [anon_sym_from] = ACTIONS(139),
    [anon_sym_isolation] = ACTIONS(139),
    [anon_sym_ratio] = ACTIONS(139),
    [anon_sym_split] = ACTIONS(139),
    [anon_sym_tee] = ACTIONS(139),
    [anon_sym_reversed] = ACTIONS(139),
    [anon_sym_passes] = ACTIONS(139),
    [anon_sym_gain] = ACTIONS(139),
    [anon_sym_noise] = ACTIONS(139),
    [anon_sym_excess] = ACTIONS(139),
    [anon_sym_ways] = ACTIONS(139),
    [anon_sym_coupled] = ACTIONS(139),
    [anon_sym_calibrated] = ACTIONS(139),
    [anon_sym_scale] = ACTIONS(139),
    [anon_sym_resolution] = ACTIONS(139),
    [anon_sym_due] = ACTIONS(139),
    [anon_sym_linearity] = ACTIONS(139),
    [anon_sym_repeatability] = ACTIONS(139),
    [anon_sym_directivity] = ACTIONS(139),
    [anon_sym_certificate] = ACTIONS(139),
    [anon_sym_load] = ACTIONS(139),
    [anon_sym_read] = ACTIONS(139),
    [anon_sym_temperature] = ACTIONS(139),
    [anon_sym_generator] = ACTIONS(139),
    [anon_sym_drift] = ACTIONS(139),
    [anon_sym_piece] = ACTIONS(139),
    [anon_sym_readings] = ACTIONS(139),
    [anon_sym_resonance] = ACTIONS(139),
    [anon_sym_delay] = ACTIONS(139),
    [anon_sym_phase] = ACTIONS(139),
    [anon_sym_adapter] = ACTIONS(139),
    [anon_sym_position] = ACTIONS(139),
    [anon_sym_ground] = ACTIONS(139),
    [anon_sym_place] = ACTIONS(139),
    [anon_sym_under] = ACTIONS(139),
    [anon_sym_beside] = ACTIONS(139),
    [anon_sym_spot] = ACTIONS(139),
    [anon_sym_alone] = ACTIONS(139),
    [anon_sym_site_DASHnoise] = ACTIONS(139),
    [anon_sym_transmitter] = ACTIONS(139),
    [anon_sym_receiver] = ACTIONS(139),
    [anon_sym_transceiver] = ACTIONS(139),
    [anon_sym_run] = ACTIONS(139),
    [anon_sym_jumper] = ACTIONS(139),
    [anon_sym_tail] = ACTIONS(139),
    [anon_sym_pad] = ACTIONS(139),
    [anon_sym_filter] = ACTIONS(139),
    [anon_sym_isolator] = ACTIONS(139),
    [anon_sym_circulator] = ACTIONS(139),
    [anon_sym_protector] = ACTIONS(139),
    [anon_sym_switch] = ACTIONS(139),
    [anon_sym_coupler] = ACTIONS(139),
    [anon_sym_meter] = ACTIONS(139),
    [anon_sym_balun] = ACTIONS(139),
    [anon_sym_tuner] = ACTIONS(139),
    [anon_sym_duplexer] = ACTIONS(139),
    [anon_sym_diplexer] = ACTIONS(139),
    [anon_sym_combiner] = ACTIONS(139),
    [anon_sym_divider] = ACTIONS(139),
    [anon_sym_amplifier] = ACTIONS(139),
    [anon_sym_preamplifier] = ACTIONS(139),
    [anon_sym_antenna] = ACTIONS(139),
    [anon_sym_branches] = ACTIONS(139),
    [anon_sym_expect] = ACTIONS(139),
    [anon_sym_authority] = ACTIONS(139),
    [anon_sym_jurisdiction] = ACTIONS(139),
    [anon_sym_service] = ACTIONS(139),
    [anon_sym_edition] = ACTIONS(139),
    [anon_sym_dated] = ACTIONS(139),
    [anon_sym_until] = ACTIONS(139),
    [anon_sym_holder] = ACTIONS(139),
    [anon_sym_class] = ACTIONS(139),
    [anon_sym_ask] = ACTIONS(139),
    [anon_sym_threshold] = ACTIONS(139),
    [anon_sym_fixed] = ACTIONS(139),
    [anon_sym_condition] = ACTIONS(139),
    [anon_sym_reflection] = ACTIONS(139),
    [anon_sym_field] = ACTIONS(139),
    [anon_sym_hop] = ACTIONS(139),
    [anon_sym_profile] = ACTIONS(139),
    [anon_sym_distance] = ACTIONS(139),
    [anon_sym_k_DASHfactor] = ACTIONS(139),
    [anon_sym_need] = ACTIONS(139),
    [anon_sym_model] = ACTIONS(139),
    [anon_sym_coverage] = ACTIONS(139),
    [anon_sym_take] = ACTIONS(139),
    [anon_sym_put] = ACTIONS(139),
    [anon_sym_branch] = ACTIONS(139),
    [anon_sym_inner] = ACTIONS(139),
    [anon_sym_outer] = ACTIONS(139),
    [anon_sym_permittivity] = ACTIONS(139),
    [anon_sym_loss_DASHtangent] = ACTIONS(139),
    [anon_sym_strand] = ACTIONS(139),
    [anon_sym_strand_DASHdiameter] = ACTIONS(139),
    [anon_sym_braid] = ACTIONS(139),
    [anon_sym_resistivity] = ACTIONS(139),
    [anon_sym_inner_DASHresistivity] = ACTIONS(139),
    [anon_sym_outer_DASHresistivity] = ACTIONS(139),
    [anon_sym_diameter] = ACTIONS(139),
    [anon_sym_spacing] = ACTIONS(139),
    [anon_sym_baseline] = ACTIONS(139),
    [anon_sym_through] = ACTIONS(139),
    [anon_sym_open] = ACTIONS(139),
    [anon_sym_short] = ACTIONS(139),
    [anon_sym_equalise] = ACTIONS(139),
    [anon_sym_power] = ACTIONS(139),
    [anon_sym_mode] = ACTIONS(139),
    [anon_sym_duty] = ACTIONS(139),
    [anon_sym_keyed] = ACTIONS(139),
    [anon_sym_foldback] = ACTIONS(139),
    [anon_sym_bandwidth] = ACTIONS(139),
    [anon_sym_sensitivity] = ACTIONS(139),
    [anon_sym_blocking] = ACTIONS(139),
    [anon_sym_efficiency] = ACTIONS(139),
    [anon_sym_height] = ACTIONS(139),
    [anon_sym_pattern] = ACTIONS(139),
    [anon_sym_haat] = ACTIONS(139),
    [anon_sym_radius] = ACTIONS(139),
    [anon_sym_fails] = ACTIONS(139),
    [anon_sym_GHz] = ACTIONS(139),
    [anon_sym_Hz] = ACTIONS(139),
    [anon_sym_MHz] = ACTIONS(139),
    [anon_sym_above] = ACTIONS(139),
    [anon_sym_added] = ACTIONS(139),
    [anon_sym_after] = ACTIONS(139),
    [anon_sym_against] = ACTIONS(139),
    [anon_sym_agl] = ACTIONS(139),
    [anon_sym_allocated] = ACTIONS(139),
    [anon_sym_am] = ACTIONS(139),
    [anon_sym_ambient] = ACTIONS(139),
    [anon_sym_amsl] = ACTIONS(139),
    [anon_sym_apart] = ACTIONS(139),
    [anon_sym_at] = ACTIONS(139),
    [anon_sym_averaging] = ACTIONS(139),
    [anon_sym_below] = ACTIONS(139),
    [anon_sym_beyond] = ACTIONS(139),
    [anon_sym_blank] = ACTIONS(139),
    [anon_sym_bow] = ACTIONS(139),
    [anon_sym_bullington] = ACTIONS(139),
    [anon_sym_by] = ACTIONS(139),
    [anon_sym_carrier] = ACTIONS(139),
    [anon_sym_cascade] = ACTIONS(139),
    [anon_sym_city] = ACTIONS(139),
    [anon_sym_clad] = ACTIONS(139),
    [anon_sym_confidence] = ACTIONS(139),
    [anon_sym_corrected] = ACTIONS(139),
    [anon_sym_cw] = ACTIONS(139),
    [anon_sym_dB] = ACTIONS(139),
    [anon_sym_dBW] = ACTIONS(139),
    [anon_sym_dBd] = ACTIONS(139),
    [anon_sym_dBi] = ACTIONS(139),
    [anon_sym_dBm] = ACTIONS(139),
    [anon_sym_data] = ACTIONS(139),
    [anon_sym_date] = ACTIONS(139),
    [anon_sym_datum] = ACTIONS(139),
    [anon_sym_dc_DASHinput] = ACTIONS(139),
    [anon_sym_degrees] = ACTIONS(139),
    [anon_sym_delivered] = ACTIONS(139),
    [anon_sym_desense] = ACTIONS(139),
    [anon_sym_displayed] = ACTIONS(139),
    [anon_sym_dms] = ACTIONS(139),
    [anon_sym_down] = ACTIONS(139),
    [anon_sym_eirp] = ACTIONS(139),
    [anon_sym_elevation] = ACTIONS(139),
    [anon_sym_ends] = ACTIONS(139),
    [anon_sym_erp] = ACTIONS(139),
    [anon_sym_etrs89] = ACTIONS(139),
    [anon_sym_figure] = ACTIONS(139),
    [anon_sym_fm] = ACTIONS(139),
    [anon_sym_for] = ACTIONS(139),
    [anon_sym_forward] = ACTIONS(139),
    [anon_sym_free_DASHspace] = ACTIONS(139),
    [anon_sym_frequency] = ACTIONS(139),
    [anon_sym_ft] = ACTIONS(139),
    [anon_sym_full] = ACTIONS(139),
    [anon_sym_guess] = ACTIONS(139),
    [anon_sym_hata_DASHopen] = ACTIONS(139),
    [anon_sym_hata_DASHsuburban] = ACTIONS(139),
    [anon_sym_hata_DASHurban] = ACTIONS(139),
    [anon_sym_height_DASHamsl] = ACTIONS(139),
    [anon_sym_horizontal] = ACTIONS(139),
    [anon_sym_if] = ACTIONS(139),
    [anon_sym_in] = ACTIONS(139),
    [anon_sym_input] = ACTIONS(139),
    [anon_sym_instead] = ACTIONS(139),
    [anon_sym_k] = ACTIONS(139),
    [anon_sym_kHz] = ACTIONS(139),
    [anon_sym_kW] = ACTIONS(139),
    [anon_sym_km] = ACTIONS(139),
    [anon_sym_latitude] = ACTIONS(139),
    [anon_sym_longitude] = ACTIONS(139),
    [anon_sym_m] = ACTIONS(139),
    [anon_sym_mW] = ACTIONS(139),
    [anon_sym_maximum] = ACTIONS(139),
    [anon_sym_mean] = ACTIONS(139),
    [anon_sym_medium] = ACTIONS(139),
    [anon_sym_nad27] = ACTIONS(139),
    [anon_sym_nad83] = ACTIONS(139),
    [anon_sym_net] = ACTIONS(139),
    [anon_sym_no] = ACTIONS(139),
    [anon_sym_nominal] = ACTIONS(139),
    [anon_sym_occupational] = ACTIONS(139),
    [anon_sym_of] = ACTIONS(139),
    [anon_sym_offset] = ACTIONS(139),
    [anon_sym_on] = ACTIONS(139),
    [anon_sym_one_DASHedge] = ACTIONS(139),
    [anon_sym_out] = ACTIONS(139),
    [anon_sym_output] = ACTIONS(139),
    [anon_sym_over] = ACTIONS(139),
    [anon_sym_pep] = ACTIONS(139),
    [anon_sym_per] = ACTIONS(139),
    [anon_sym_places] = ACTIONS(139),
    [anon_sym_public] = ACTIONS(139),
    [anon_sym_quiet_DASHrural] = ACTIONS(139),
    [anon_sym_quieting] = ACTIONS(139),
    [anon_sym_rated] = ACTIONS(139),
    [anon_sym_reactance] = ACTIONS(139),
    [anon_sym_reading] = ACTIONS(139),
    [anon_sym_realized] = ACTIONS(139),
    [anon_sym_receive_DASHfrequency] = ACTIONS(139),
    [anon_sym_receive_DASHloss] = ACTIONS(139),
    [anon_sym_reference] = ACTIONS(139),
    [anon_sym_reflected] = ACTIONS(139),
    [anon_sym_rejects] = ACTIONS(139),
    [anon_sym_residential] = ACTIONS(139),
    [anon_sym_rural] = ACTIONS(139),
    [anon_sym_series] = ACTIONS(139),
    [anon_sym_shared] = ACTIONS(139),
    [anon_sym_sheet] = ACTIONS(139),
    [anon_sym_shunt] = ACTIONS(139),
    [anon_sym_sinad] = ACTIONS(139),
    [anon_sym_since] = ACTIONS(139),
    [anon_sym_snr] = ACTIONS(139),
    [anon_sym_spread] = ACTIONS(139),
    [anon_sym_ssb] = ACTIONS(139),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(139),
    [anon_sym_then] = ACTIONS(139),
    [anon_sym_title] = ACTIONS(139),
    [anon_sym_to] = ACTIONS(139),
    [anon_sym_total] = ACTIONS(139),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(139),
    [anon_sym_two_DASHray] = ACTIONS(139),
    [anon_sym_typical] = ACTIONS(139),
    [anon_sym_up] = ACTIONS(139),
    [anon_sym_vertical] = ACTIONS(139),
    [anon_sym_way] = ACTIONS(139),
    [anon_sym_wet] = ACTIONS(139),
    [anon_sym_wgs84] = ACTIONS(139),
    [anon_sym_with] = ACTIONS(139),
    [anon_sym_within] = ACTIONS(139),
    [anon_sym_yes] = ACTIONS(139),
    [anon_sym_COMMA] = ACTIONS(137),
    [anon_sym_EQ] = ACTIONS(137),
    [anon_sym_LPAREN] = ACTIONS(137),
    [anon_sym_DASH] = ACTIONS(139),
    [anon_sym_u2212] = ACTIONS(139),
    [anon_sym_u2013] = ACTIONS(139),
    [anon_sym_PLUS] = ACTIONS(139),
    [anon_sym_STAR] = ACTIONS(137),
    [anon_sym_SLASH] = ACTIONS(139),
    [anon_sym_CARET] = ACTIONS(137),
    [sym__glued] = ACTIONS(139),
    [sym_date] = ACTIONS(139),
    [sym_dms] = ACTIONS(137),
    [sym_number] = ACTIONS(139),
    [sym_digit_name] = ACTIONS(139),
    [sym_string] = ACTIONS(137),
    [sym_comment] = ACTIONS(3),
  },
  [31] = {
    [ts_builtin_sym_end] = ACTIONS(159),
    [sym_name] = ACTIONS(161),
    [aux_sym__end_token1] = ACTIONS(159),
    [anon_sym_SEMI] = ACTIONS(159),
    [anon_sym_LBRACE] = ACTIONS(159),
    [anon_sym_RBRACE] = ACTIONS(159),
    [anon_sym_use] = ACTIONS(161),
    [anon_sym_band] = ACTIONS(161),
    [anon_sym_let] = ACTIONS(161),
    [anon_sym_cable] = ACTIONS(161),
    [anon_sym_connector] = ACTIONS(161),
    [anon_sym_device] = ACTIONS(161),
    [anon_sym_instrument] = ACTIONS(161),
    [anon_sym_session] = ACTIONS(161),
    [anon_sym_station] = ACTIONS(161),
    [anon_sym_chain] = ACTIONS(161),
    [anon_sym_licence] = ACTIONS(161),
    [anon_sym_rules] = ACTIONS(161),
    [anon_sym_link] = ACTIONS(161),
    [anon_sym_variant] = ACTIONS(161),
    [anon_sym_accept] = ACTIONS(161),
    [anon_sym_transmit] = ACTIONS(161),
    [anon_sym_receive] = ACTIONS(161),
    [anon_sym_impedance] = ACTIONS(161),
    [anon_sym_velocity] = ACTIONS(161),
    [anon_sym_loss] = ACTIONS(161),
    [anon_sym_construction] = ACTIONS(161),
    [anon_sym_wires] = ACTIONS(161),
    [anon_sym_valid] = ACTIONS(161),
    [anon_sym_accuracy] = ACTIONS(161),
    [anon_sym_rating] = ACTIONS(161),
    [anon_sym_voltage] = ACTIONS(161),
    [anon_sym_size] = ACTIONS(161),
    [anon_sym_conductor] = ACTIONS(161),
    [anon_sym_source] = ACTIONS(161),
    [anon_sym_recalled] = ACTIONS(161),
    [anon_sym_joins] = ACTIONS(161),
    [anon_sym_limit] = ACTIONS(161),
    [anon_sym_family] = ACTIONS(161),
    [anon_sym_bump] = ACTIONS(161),
    [anon_sym_return_DASHloss] = ACTIONS(161),
    [anon_sym_swr] = ACTIONS(161),
    [anon_sym_kind] = ACTIONS(161),
    [anon_sym_high] = ACTIONS(161),
    [anon_sym_low] = ACTIONS(161),
    [anon_sym_port] = ACTIONS(161),
    [anon_sym_from] = ACTIONS(161),
    [anon_sym_isolation] = ACTIONS(161),
    [anon_sym_ratio] = ACTIONS(161),
    [anon_sym_split] = ACTIONS(161),
    [anon_sym_tee] = ACTIONS(161),
    [anon_sym_reversed] = ACTIONS(161),
    [anon_sym_passes] = ACTIONS(161),
    [anon_sym_gain] = ACTIONS(161),
    [anon_sym_noise] = ACTIONS(161),
    [anon_sym_excess] = ACTIONS(161),
    [anon_sym_ways] = ACTIONS(161),
    [anon_sym_coupled] = ACTIONS(161),
    [anon_sym_calibrated] = ACTIONS(161),
    [anon_sym_scale] = ACTIONS(161),
    [anon_sym_resolution] = ACTIONS(161),
    [anon_sym_due] = ACTIONS(161),
    [anon_sym_linearity] = ACTIONS(161),
    [anon_sym_repeatability] = ACTIONS(161),
    [anon_sym_directivity] = ACTIONS(161),
    [anon_sym_certificate] = ACTIONS(161),
    [anon_sym_load] = ACTIONS(161),
    [anon_sym_read] = ACTIONS(161),
    [anon_sym_temperature] = ACTIONS(161),
    [anon_sym_generator] = ACTIONS(161),
    [anon_sym_drift] = ACTIONS(161),
    [anon_sym_piece] = ACTIONS(161),
    [anon_sym_readings] = ACTIONS(161),
    [anon_sym_resonance] = ACTIONS(161),
    [anon_sym_delay] = ACTIONS(161),
    [anon_sym_phase] = ACTIONS(161),
    [anon_sym_adapter] = ACTIONS(161),
    [anon_sym_position] = ACTIONS(161),
    [anon_sym_ground] = ACTIONS(161),
    [anon_sym_place] = ACTIONS(161),
    [anon_sym_under] = ACTIONS(161),
    [anon_sym_beside] = ACTIONS(161),
    [anon_sym_spot] = ACTIONS(161),
    [anon_sym_alone] = ACTIONS(161),
    [anon_sym_site_DASHnoise] = ACTIONS(161),
    [anon_sym_transmitter] = ACTIONS(161),
    [anon_sym_receiver] = ACTIONS(161),
    [anon_sym_transceiver] = ACTIONS(161),
    [anon_sym_run] = ACTIONS(161),
    [anon_sym_jumper] = ACTIONS(161),
    [anon_sym_tail] = ACTIONS(161),
    [anon_sym_pad] = ACTIONS(161),
    [anon_sym_filter] = ACTIONS(161),
    [anon_sym_isolator] = ACTIONS(161),
    [anon_sym_circulator] = ACTIONS(161),
    [anon_sym_protector] = ACTIONS(161),
    [anon_sym_switch] = ACTIONS(161),
    [anon_sym_coupler] = ACTIONS(161),
    [anon_sym_meter] = ACTIONS(161),
    [anon_sym_balun] = ACTIONS(161),
    [anon_sym_tuner] = ACTIONS(161),
    [anon_sym_duplexer] = ACTIONS(161),
    [anon_sym_diplexer] = ACTIONS(161),
    [anon_sym_combiner] = ACTIONS(161),
    [anon_sym_divider] = ACTIONS(161),
    [anon_sym_amplifier] = ACTIONS(161),
    [anon_sym_preamplifier] = ACTIONS(161),
    [anon_sym_antenna] = ACTIONS(161),
    [anon_sym_branches] = ACTIONS(161),
    [anon_sym_expect] = ACTIONS(161),
    [anon_sym_authority] = ACTIONS(161),
    [anon_sym_jurisdiction] = ACTIONS(161),
    [anon_sym_service] = ACTIONS(161),
    [anon_sym_edition] = ACTIONS(161),
    [anon_sym_dated] = ACTIONS(161),
    [anon_sym_until] = ACTIONS(161),
    [anon_sym_holder] = ACTIONS(161),
    [anon_sym_class] = ACTIONS(161),
    [anon_sym_ask] = ACTIONS(161),
    [anon_sym_threshold] = ACTIONS(161),
    [anon_sym_fixed] = ACTIONS(161),
    [anon_sym_condition] = ACTIONS(161),
    [anon_sym_reflection] = ACTIONS(161),
    [anon_sym_field] = ACTIONS(161),
    [anon_sym_hop] = ACTIONS(161),
    [anon_sym_profile] = ACTIONS(161),
    [anon_sym_distance] = ACTIONS(161),
    [anon_sym_k_DASHfactor] = ACTIONS(161),
    [anon_sym_need] = ACTIONS(161),
    [anon_sym_model] = ACTIONS(161),
    [anon_sym_coverage] = ACTIONS(161),
    [anon_sym_take] = ACTIONS(161),
    [anon_sym_put] = ACTIONS(161),
    [anon_sym_branch] = ACTIONS(161),
    [anon_sym_inner] = ACTIONS(161),
    [anon_sym_outer] = ACTIONS(161),
    [anon_sym_permittivity] = ACTIONS(161),
    [anon_sym_loss_DASHtangent] = ACTIONS(161),
    [anon_sym_strand] = ACTIONS(161),
    [anon_sym_strand_DASHdiameter] = ACTIONS(161),
    [anon_sym_braid] = ACTIONS(161),
    [anon_sym_resistivity] = ACTIONS(161),
    [anon_sym_inner_DASHresistivity] = ACTIONS(161),
    [anon_sym_outer_DASHresistivity] = ACTIONS(161),
    [anon_sym_diameter] = ACTIONS(161),
    [anon_sym_spacing] = ACTIONS(161),
    [anon_sym_baseline] = ACTIONS(161),
    [anon_sym_through] = ACTIONS(161),
    [anon_sym_open] = ACTIONS(161),
    [anon_sym_short] = ACTIONS(161),
    [anon_sym_equalise] = ACTIONS(161),
    [anon_sym_power] = ACTIONS(161),
    [anon_sym_mode] = ACTIONS(161),
    [anon_sym_duty] = ACTIONS(161),
    [anon_sym_keyed] = ACTIONS(161),
    [anon_sym_foldback] = ACTIONS(161),
    [anon_sym_bandwidth] = ACTIONS(161),
    [anon_sym_sensitivity] = ACTIONS(161),
    [anon_sym_blocking] = ACTIONS(161),
    [anon_sym_efficiency] = ACTIONS(161),
    [anon_sym_height] = ACTIONS(161),
    [anon_sym_pattern] = ACTIONS(161),
    [anon_sym_haat] = ACTIONS(161),
    [anon_sym_radius] = ACTIONS(161),
    [anon_sym_fails] = ACTIONS(161),
    [anon_sym_GHz] = ACTIONS(161),
    [anon_sym_Hz] = ACTIONS(161),
    [anon_sym_MHz] = ACTIONS(161),
    [anon_sym_above] = ACTIONS(161),
    [anon_sym_added] = ACTIONS(161),
    [anon_sym_after] = ACTIONS(161),
    [anon_sym_against] = ACTIONS(161),
    [anon_sym_agl] = ACTIONS(161),
    [anon_sym_allocated] = ACTIONS(161),
    [anon_sym_am] = ACTIONS(161),
    [anon_sym_ambient] = ACTIONS(161),
    [anon_sym_amsl] = ACTIONS(161),
    [anon_sym_apart] = ACTIONS(161),
    [anon_sym_at] = ACTIONS(161),
    [anon_sym_averaging] = ACTIONS(161),
    [anon_sym_below] = ACTIONS(161),
    [anon_sym_beyond] = ACTIONS(161),
    [anon_sym_blank] = ACTIONS(161),
    [anon_sym_bow] = ACTIONS(161),
    [anon_sym_bullington] = ACTIONS(161),
    [anon_sym_by] = ACTIONS(161),
    [anon_sym_carrier] = ACTIONS(161),
    [anon_sym_cascade] = ACTIONS(161),
    [anon_sym_city] = ACTIONS(161),
    [anon_sym_clad] = ACTIONS(161),
    [anon_sym_confidence] = ACTIONS(161),
    [anon_sym_corrected] = ACTIONS(161),
    [anon_sym_cw] = ACTIONS(161),
    [anon_sym_dB] = ACTIONS(161),
    [anon_sym_dBW] = ACTIONS(161),
    [anon_sym_dBd] = ACTIONS(161),
    [anon_sym_dBi] = ACTIONS(161),
    [anon_sym_dBm] = ACTIONS(161),
    [anon_sym_data] = ACTIONS(161),
    [anon_sym_date] = ACTIONS(161),
    [anon_sym_datum] = ACTIONS(161),
    [anon_sym_dc_DASHinput] = ACTIONS(161),
    [anon_sym_degrees] = ACTIONS(161),
    [anon_sym_delivered] = ACTIONS(161),
    [anon_sym_desense] = ACTIONS(161),
    [anon_sym_displayed] = ACTIONS(161),
    [anon_sym_dms] = ACTIONS(161),
    [anon_sym_down] = ACTIONS(161),
    [anon_sym_eirp] = ACTIONS(161),
    [anon_sym_elevation] = ACTIONS(161),
    [anon_sym_ends] = ACTIONS(161),
    [anon_sym_erp] = ACTIONS(161),
    [anon_sym_etrs89] = ACTIONS(161),
    [anon_sym_figure] = ACTIONS(161),
    [anon_sym_fm] = ACTIONS(161),
    [anon_sym_for] = ACTIONS(161),
    [anon_sym_forward] = ACTIONS(161),
    [anon_sym_free_DASHspace] = ACTIONS(161),
    [anon_sym_frequency] = ACTIONS(161),
    [anon_sym_ft] = ACTIONS(161),
    [anon_sym_full] = ACTIONS(161),
    [anon_sym_guess] = ACTIONS(161),
    [anon_sym_hata_DASHopen] = ACTIONS(161),
    [anon_sym_hata_DASHsuburban] = ACTIONS(161),
    [anon_sym_hata_DASHurban] = ACTIONS(161),
    [anon_sym_height_DASHamsl] = ACTIONS(161),
    [anon_sym_horizontal] = ACTIONS(161),
    [anon_sym_if] = ACTIONS(161),
    [anon_sym_in] = ACTIONS(161),
    [anon_sym_input] = ACTIONS(161),
    [anon_sym_instead] = ACTIONS(161),
    [anon_sym_k] = ACTIONS(161),
    [anon_sym_kHz] = ACTIONS(161),
    [anon_sym_kW] = ACTIONS(161),
    [anon_sym_km] = ACTIONS(161),
    [anon_sym_latitude] = ACTIONS(161),
    [anon_sym_longitude] = ACTIONS(161),
    [anon_sym_m] = ACTIONS(161),
    [anon_sym_mW] = ACTIONS(161),
    [anon_sym_maximum] = ACTIONS(161),
    [anon_sym_mean] = ACTIONS(161),
    [anon_sym_medium] = ACTIONS(161),
    [anon_sym_nad27] = ACTIONS(161),
    [anon_sym_nad83] = ACTIONS(161),
    [anon_sym_net] = ACTIONS(161),
    [anon_sym_no] = ACTIONS(161),
    [anon_sym_nominal] = ACTIONS(161),
    [anon_sym_occupational] = ACTIONS(161),
    [anon_sym_of] = ACTIONS(161),
    [anon_sym_offset] = ACTIONS(161),
    [anon_sym_on] = ACTIONS(161),
    [anon_sym_one_DASHedge] = ACTIONS(161),
    [anon_sym_out] = ACTIONS(161),
    [anon_sym_output] = ACTIONS(161),
    [anon_sym_over] = ACTIONS(161),
    [anon_sym_pep] = ACTIONS(161),
    [anon_sym_per] = ACTIONS(161),
    [anon_sym_places] = ACTIONS(161),
    [anon_sym_public] = ACTIONS(161),
    [anon_sym_quiet_DASHrural] = ACTIONS(161),
    [anon_sym_quieting] = ACTIONS(161),
    [anon_sym_rated] = ACTIONS(161),
    [anon_sym_reactance] = ACTIONS(161),
    [anon_sym_reading] = ACTIONS(161),
    [anon_sym_realized] = ACTIONS(161),
    [anon_sym_receive_DASHfrequency] = ACTIONS(161),
    [anon_sym_receive_DASHloss] = ACTIONS(161),
    [anon_sym_reference] = ACTIONS(161),
    [anon_sym_reflected] = ACTIONS(161),
    [anon_sym_rejects] = ACTIONS(161),
    [anon_sym_residential] = ACTIONS(161),
    [anon_sym_rural] = ACTIONS(161),
    [anon_sym_series] = ACTIONS(161),
    [anon_sym_shared] = ACTIONS(161),
    [anon_sym_sheet] = ACTIONS(161),
    [anon_sym_shunt] = ACTIONS(161),
    [anon_sym_sinad] = ACTIONS(161),
    [anon_sym_since] = ACTIONS(161),
    [anon_sym_snr] = ACTIONS(161),
    [anon_sym_spread] = ACTIONS(161),
    [anon_sym_ssb] = ACTIONS(161),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(161),
    [anon_sym_then] = ACTIONS(161),
    [anon_sym_title] = ACTIONS(161),
    [anon_sym_to] = ACTIONS(161),
    [anon_sym_total] = ACTIONS(161),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(161),
    [anon_sym_two_DASHray] = ACTIONS(161),
    [anon_sym_typical] = ACTIONS(161),
    [anon_sym_up] = ACTIONS(161),
    [anon_sym_vertical] = ACTIONS(161),
    [anon_sym_way] = ACTIONS(161),
    [anon_sym_wet] = ACTIONS(161),
    [anon_sym_wgs84] = ACTIONS(161),
    [anon_sym_with] = ACTIONS(161),
    [anon_sym_within] = ACTIONS(161),
    [anon_sym_yes] = ACTIONS(161),
    [anon_sym_COMMA] = ACTIONS(159),
    [anon_sym_EQ] = ACTIONS(159),
    [anon_sym_LPAREN] = ACTIONS(159),
    [anon_sym_DASH] = ACTIONS(161),
    [anon_sym_u2212] = ACTIONS(161),
    [anon_sym_u2013] = ACTIONS(161),
    [anon_sym_PLUS] = ACTIONS(161),
    [anon_sym_STAR] = ACTIONS(159),
    [anon_sym_SLASH] = ACTIONS(161),
    [anon_sym_CARET] = ACTIONS(159),
    [sym__glued] = ACTIONS(161),
    [sym_date] = ACTIONS(161),
    [sym_dms] = ACTIONS(159),
    [sym_number] = ACTIONS(161),
    [sym_digit_name] = ACTIONS(161),
    [sym_string] = ACTIONS(159),
    [sym_comment] = ACTIONS(3),
  },
  [32] = {
    [ts_builtin_sym_end] = ACTIONS(177),
    [sym_name] = ACTIONS(179),
    [aux_sym__end_token1] = ACTIONS(177),
    [anon_sym_SEMI] = ACTIONS(177),
    [anon_sym_LBRACE] = ACTIONS(177),
    [anon_sym_RBRACE] = ACTIONS(177),
    [anon_sym_use] = ACTIONS(179),
    [anon_sym_band] = ACTIONS(179),
    [anon_sym_let] = ACTIONS(179),
    [anon_sym_cable] = ACTIONS(179),
    [anon_sym_connector] = ACTIONS(179),
    [anon_sym_device] = ACTIONS(179),
    [anon_sym_instrument] = ACTIONS(179),
    [anon_sym_session] = ACTIONS(179),
    [anon_sym_station] = ACTIONS(179),
    [anon_sym_chain] = ACTIONS(179),
    [anon_sym_licence] = ACTIONS(179),
    [anon_sym_rules] = ACTIONS(179),
    [anon_sym_link] = ACTIONS(179),
    [anon_sym_variant] = ACTIONS(179),
    [anon_sym_accept] = ACTIONS(179),
    [anon_sym_transmit] = ACTIONS(179),
    [anon_sym_receive] = ACTIONS(179),
    [anon_sym_impedance] = ACTIONS(179),
    [anon_sym_velocity] = ACTIONS(179),
    [anon_sym_loss] = ACTIONS(179),
    [anon_sym_construction] = ACTIONS(179),
    [anon_sym_wires] = ACTIONS(179),
    [anon_sym_valid] = ACTIONS(179),
    [anon_sym_accuracy] = ACTIONS(179),
    [anon_sym_rating] = ACTIONS(179),
    [anon_sym_voltage] = ACTIONS(179),
    [anon_sym_size] = ACTIONS(179),
    [anon_sym_conductor] = ACTIONS(179),
    [anon_sym_source] = ACTIONS(179),
    [anon_sym_recalled] = ACTIONS(179),
    [anon_sym_joins] = ACTIONS(179),
    [anon_sym_limit] = ACTIONS(179),
    [anon_sym_family] = ACTIONS(179),
    [anon_sym_bump] = ACTIONS(179),
    [anon_sym_return_DASHloss] = ACTIONS(179),
    [anon_sym_swr] = ACTIONS(179),
    [anon_sym_kind] = ACTIONS(179),
    [anon_sym_high] = ACTIONS(179),
    [anon_sym_low] = ACTIONS(179),
    [anon_sym_port] = ACTIONS(179),
    [anon_sym_from] = ACTIONS(179),
    [anon_sym_isolation] = ACTIONS(179),
    [anon_sym_ratio] = ACTIONS(179),
    [anon_sym_split] = ACTIONS(179),
    [anon_sym_tee] = ACTIONS(179),
    [anon_sym_reversed] = ACTIONS(179),
    [anon_sym_passes] = ACTIONS(179),
    [anon_sym_gain] = ACTIONS(179),
    [anon_sym_noise] = ACTIONS(179),
    [anon_sym_excess] = ACTIONS(179),
    [anon_sym_ways] = ACTIONS(179),
    [anon_sym_coupled] = ACTIONS(179),
    [anon_sym_calibrated] = ACTIONS(179),
    [anon_sym_scale] = ACTIONS(179),
    [anon_sym_resolution] = ACTIONS(179),
    [anon_sym_due] = ACTIONS(179),
    [anon_sym_linearity] = ACTIONS(179),
    [anon_sym_repeatability] = ACTIONS(179),
    [anon_sym_directivity] = ACTIONS(179),
    [anon_sym_certificate] = ACTIONS(179),
    [anon_sym_load] = ACTIONS(179),
    [anon_sym_read] = ACTIONS(179),
    [anon_sym_temperature] = ACTIONS(179),
    [anon_sym_generator] = ACTIONS(179),
    [anon_sym_drift] = ACTIONS(179),
    [anon_sym_piece] = ACTIONS(179),
    [anon_sym_readings] = ACTIONS(179),
    [anon_sym_resonance] = ACTIONS(179),
    [anon_sym_delay] = ACTIONS(179),
    [anon_sym_phase] = ACTIONS(179),
    [anon_sym_adapter] = ACTIONS(179),
    [anon_sym_position] = ACTIONS(179),
    [anon_sym_ground] = ACTIONS(179),
    [anon_sym_place] = ACTIONS(179),
    [anon_sym_under] = ACTIONS(179),
    [anon_sym_beside] = ACTIONS(179),
    [anon_sym_spot] = ACTIONS(179),
    [anon_sym_alone] = ACTIONS(179),
    [anon_sym_site_DASHnoise] = ACTIONS(179),
    [anon_sym_transmitter] = ACTIONS(179),
    [anon_sym_receiver] = ACTIONS(179),
    [anon_sym_transceiver] = ACTIONS(179),
    [anon_sym_run] = ACTIONS(179),
    [anon_sym_jumper] = ACTIONS(179),
    [anon_sym_tail] = ACTIONS(179),
    [anon_sym_pad] = ACTIONS(179),
    [anon_sym_filter] = ACTIONS(179),
    [anon_sym_isolator] = ACTIONS(179),
    [anon_sym_circulator] = ACTIONS(179),
    [anon_sym_protector] = ACTIONS(179),
    [anon_sym_switch] = ACTIONS(179),
    [anon_sym_coupler] = ACTIONS(179),
    [anon_sym_meter] = ACTIONS(179),
    [anon_sym_balun] = ACTIONS(179),
    [anon_sym_tuner] = ACTIONS(179),
    [anon_sym_duplexer] = ACTIONS(179),
    [anon_sym_diplexer] = ACTIONS(179),
    [anon_sym_combiner] = ACTIONS(179),
    [anon_sym_divider] = ACTIONS(179),
    [anon_sym_amplifier] = ACTIONS(179),
    [anon_sym_preamplifier] = ACTIONS(179),
    [anon_sym_antenna] = ACTIONS(179),
    [anon_sym_branches] = ACTIONS(179),
    [anon_sym_expect] = ACTIONS(179),
    [anon_sym_authority] = ACTIONS(179),
    [anon_sym_jurisdiction] = ACTIONS(179),
    [anon_sym_service] = ACTIONS(179),
    [anon_sym_edition] = ACTIONS(179),
    [anon_sym_dated] = ACTIONS(179),
    [anon_sym_until] = ACTIONS(179),
    [anon_sym_holder] = ACTIONS(179),
    [anon_sym_class] = ACTIONS(179),
    [anon_sym_ask] = ACTIONS(179),
    [anon_sym_threshold] = ACTIONS(179),
    [anon_sym_fixed] = ACTIONS(179),
    [anon_sym_condition] = ACTIONS(179),
    [anon_sym_reflection] = ACTIONS(179),
    [anon_sym_field] = ACTIONS(179),
    [anon_sym_hop] = ACTIONS(179),
    [anon_sym_profile] = ACTIONS(179),
    [anon_sym_distance] = ACTIONS(179),
    [anon_sym_k_DASHfactor] = ACTIONS(179),
    [anon_sym_need] = ACTIONS(179),
    [anon_sym_model] = ACTIONS(179),
    [anon_sym_coverage] = ACTIONS(179),
    [anon_sym_take] = ACTIONS(179),
    [anon_sym_put] = ACTIONS(179),
    [anon_sym_branch] = ACTIONS(179),
    [anon_sym_inner] = ACTIONS(179),
    [anon_sym_outer] = ACTIONS(179),
    [anon_sym_permittivity] = ACTIONS(179),
    [anon_sym_loss_DASHtangent] = ACTIONS(179),
    [anon_sym_strand] = ACTIONS(179),
    [anon_sym_strand_DASHdiameter] = ACTIONS(179),
    [anon_sym_braid] = ACTIONS(179),
    [anon_sym_resistivity] = ACTIONS(179),
    [anon_sym_inner_DASHresistivity] = ACTIONS(179),
    [anon_sym_outer_DASHresistivity] = ACTIONS(179),
    [anon_sym_diameter] = ACTIONS(179),
    [anon_sym_spacing] = ACTIONS(179),
    [anon_sym_baseline] = ACTIONS(179),
    [anon_sym_through] = ACTIONS(179),
    [anon_sym_open] = ACTIONS(179),
    [anon_sym_short] = ACTIONS(179),
    [anon_sym_equalise] = ACTIONS(179),
    [anon_sym_power] = ACTIONS(179),
    [anon_sym_mode] = ACTIONS(179),
    [anon_sym_duty] = ACTIONS(179),
    [anon_sym_keyed] = ACTIONS(179),
    [anon_sym_foldback] = ACTIONS(179),
    [anon_sym_bandwidth] = ACTIONS(179),
    [anon_sym_sensitivity] = ACTIONS(179),
    [anon_sym_blocking] = ACTIONS(179),
    [anon_sym_efficiency] = ACTIONS(179),
    [anon_sym_height] = ACTIONS(179),
    [anon_sym_pattern] = ACTIONS(179),
    [anon_sym_haat] = ACTIONS(179),
    [anon_sym_radius] = ACTIONS(179),
    [anon_sym_fails] = ACTIONS(179),
    [anon_sym_GHz] = ACTIONS(179),
    [anon_sym_Hz] = ACTIONS(179),
    [anon_sym_MHz] = ACTIONS(179),
    [anon_sym_above] = ACTIONS(179),
    [anon_sym_added] = ACTIONS(179),
    [anon_sym_after] = ACTIONS(179),
    [anon_sym_against] = ACTIONS(179),
    [anon_sym_agl] = ACTIONS(179),
    [anon_sym_allocated] = ACTIONS(179),
    [anon_sym_am] = ACTIONS(179),
    [anon_sym_ambient] = ACTIONS(179),
    [anon_sym_amsl] = ACTIONS(179),
    [anon_sym_apart] = ACTIONS(179),
    [anon_sym_at] = ACTIONS(179),
    [anon_sym_averaging] = ACTIONS(179),
    [anon_sym_below] = ACTIONS(179),
    [anon_sym_beyond] = ACTIONS(179),
    [anon_sym_blank] = ACTIONS(179),
    [anon_sym_bow] = ACTIONS(179),
    [anon_sym_bullington] = ACTIONS(179),
    [anon_sym_by] = ACTIONS(179),
    [anon_sym_carrier] = ACTIONS(179),
    [anon_sym_cascade] = ACTIONS(179),
    [anon_sym_city] = ACTIONS(179),
    [anon_sym_clad] = ACTIONS(179),
    [anon_sym_confidence] = ACTIONS(179),
    [anon_sym_corrected] = ACTIONS(179),
    [anon_sym_cw] = ACTIONS(179),
    [anon_sym_dB] = ACTIONS(179),
    [anon_sym_dBW] = ACTIONS(179),
    [anon_sym_dBd] = ACTIONS(179),
    [anon_sym_dBi] = ACTIONS(179),
    [anon_sym_dBm] = ACTIONS(179),
    [anon_sym_data] = ACTIONS(179),
    [anon_sym_date] = ACTIONS(179),
    [anon_sym_datum] = ACTIONS(179),
    [anon_sym_dc_DASHinput] = ACTIONS(179),
    [anon_sym_degrees] = ACTIONS(179),
    [anon_sym_delivered] = ACTIONS(179),
    [anon_sym_desense] = ACTIONS(179),
    [anon_sym_displayed] = ACTIONS(179),
    [anon_sym_dms] = ACTIONS(179),
    [anon_sym_down] = ACTIONS(179),
    [anon_sym_eirp] = ACTIONS(179),
    [anon_sym_elevation] = ACTIONS(179),
    [anon_sym_ends] = ACTIONS(179),
    [anon_sym_erp] = ACTIONS(179),
    [anon_sym_etrs89] = ACTIONS(179),
    [anon_sym_figure] = ACTIONS(179),
    [anon_sym_fm] = ACTIONS(179),
    [anon_sym_for] = ACTIONS(179),
    [anon_sym_forward] = ACTIONS(179),
    [anon_sym_free_DASHspace] = ACTIONS(179),
    [anon_sym_frequency] = ACTIONS(179),
    [anon_sym_ft] = ACTIONS(179),
    [anon_sym_full] = ACTIONS(179),
    [anon_sym_guess] = ACTIONS(179),
    [anon_sym_hata_DASHopen] = ACTIONS(179),
    [anon_sym_hata_DASHsuburban] = ACTIONS(179),
    [anon_sym_hata_DASHurban] = ACTIONS(179),
    [anon_sym_height_DASHamsl] = ACTIONS(179),
    [anon_sym_horizontal] = ACTIONS(179),
    [anon_sym_if] = ACTIONS(179),
    [anon_sym_in] = ACTIONS(179),
    [anon_sym_input] = ACTIONS(179),
    [anon_sym_instead] = ACTIONS(179),
    [anon_sym_k] = ACTIONS(179),
    [anon_sym_kHz] = ACTIONS(179),
    [anon_sym_kW] = ACTIONS(179),
    [anon_sym_km] = ACTIONS(179),
    [anon_sym_latitude] = ACTIONS(179),
    [anon_sym_longitude] = ACTIONS(179),
    [anon_sym_m] = ACTIONS(179),
    [anon_sym_mW] = ACTIONS(179),
    [anon_sym_maximum] = ACTIONS(179),
    [anon_sym_mean] = ACTIONS(179),
    [anon_sym_medium] = ACTIONS(179),
    [anon_sym_nad27] = ACTIONS(179),
    [anon_sym_nad83] = ACTIONS(179),
    [anon_sym_net] = ACTIONS(179),
    [anon_sym_no] = ACTIONS(179),
    [anon_sym_nominal] = ACTIONS(179),
    [anon_sym_occupational] = ACTIONS(179),
    [anon_sym_of] = ACTIONS(179),
    [anon_sym_offset] = ACTIONS(179),
    [anon_sym_on] = ACTIONS(179),
    [anon_sym_one_DASHedge] = ACTIONS(179),
    [anon_sym_out] = ACTIONS(179),
    [anon_sym_output] = ACTIONS(179),
    [anon_sym_over] = ACTIONS(179),
    [anon_sym_pep] = ACTIONS(179),
    [anon_sym_per] = ACTIONS(179),
    [anon_sym_places] = ACTIONS(179),
    [anon_sym_public] = ACTIONS(179),
    [anon_sym_quiet_DASHrural] = ACTIONS(179),
    [anon_sym_quieting] = ACTIONS(179),
    [anon_sym_rated] = ACTIONS(179),
    [anon_sym_reactance] = ACTIONS(179),
    [anon_sym_reading] = ACTIONS(179),
    [anon_sym_realized] = ACTIONS(179),
    [anon_sym_receive_DASHfrequency] = ACTIONS(179),
    [anon_sym_receive_DASHloss] = ACTIONS(179),
    [anon_sym_reference] = ACTIONS(179),
    [anon_sym_reflected] = ACTIONS(179),
    [anon_sym_rejects] = ACTIONS(179),
    [anon_sym_residential] = ACTIONS(179),
    [anon_sym_rural] = ACTIONS(179),
    [anon_sym_series] = ACTIONS(179),
    [anon_sym_shared] = ACTIONS(179),
    [anon_sym_sheet] = ACTIONS(179),
    [anon_sym_shunt] = ACTIONS(179),
    [anon_sym_sinad] = ACTIONS(179),
    [anon_sym_since] = ACTIONS(179),
    [anon_sym_snr] = ACTIONS(179),
    [anon_sym_spread] = ACTIONS(179),
    [anon_sym_ssb] = ACTIONS(179),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(179),
    [anon_sym_then] = ACTIONS(179),
    [anon_sym_title] = ACTIONS(179),
    [anon_sym_to] = ACTIONS(179),
    [anon_sym_total] = ACTIONS(179),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(179),
    [anon_sym_two_DASHray] = ACTIONS(179),
    [anon_sym_typical] = ACTIONS(179),
    [anon_sym_up] = ACTIONS(179),
    [anon_sym_vertical] = ACTIONS(179),
    [anon_sym_way] = ACTIONS(179),
    [anon_sym_wet] = ACTIONS(179),
    [anon_sym_wgs84] = ACTIONS(179),
    [anon_sym_with] = ACTIONS(179),
    [anon_sym_within] = ACTIONS(179),
    [anon_sym_yes] = ACTIONS(179),
    [anon_sym_COMMA] = ACTIONS(177),
    [anon_sym_EQ] = ACTIONS(177),
    [anon_sym_LPAREN] = ACTIONS(177),
    [anon_sym_DASH] = ACTIONS(179),
    [anon_sym_u2212] = ACTIONS(179),
    [anon_sym_u2013] = ACTIONS(179),
    [sym__glued] = ACTIONS(179),
    [sym_date] = ACTIONS(179),
    [sym_dms] = ACTIONS(177),
    [sym_number] = ACTIONS(179),
    [sym_digit_name] = ACTIONS(179),
    [sym_string] = ACTIONS(177),
    [sym_comment] = ACTIONS(3),
  },
  [33] = {
    [ts_builtin_sym_end] = ACTIONS(181),
    [sym_name] = ACTIONS(183),
    [aux_sym__end_token1] = ACTIONS(181),
    [anon_sym_SEMI] = ACTIONS(181),
    [anon_sym_LBRACE] = ACTIONS(181),
    [anon_sym_RBRACE] = ACTIONS(181),
    [anon_sym_use] = ACTIONS(183),
    [anon_sym_band] = ACTIONS(183),
    [anon_sym_let] = ACTIONS(183),
    [anon_sym_cable] = ACTIONS(183),
    [anon_sym_connector] = ACTIONS(183),
    [anon_sym_device] = ACTIONS(183),
    [anon_sym_instrument] = ACTIONS(183),
    [anon_sym_session] = ACTIONS(183),
    [anon_sym_station] = ACTIONS(183),
    [anon_sym_chain] = ACTIONS(183),
    [anon_sym_licence] = ACTIONS(183),
    [anon_sym_rules] = ACTIONS(183),
    [anon_sym_link] = ACTIONS(183),
    [anon_sym_variant] = ACTIONS(183),
    [anon_sym_accept] = ACTIONS(183),
    [anon_sym_transmit] = ACTIONS(183),
    [anon_sym_receive] = ACTIONS(183),
    [anon_sym_impedance] = ACTIONS(183),
    [anon_sym_velocity] = ACTIONS(183),
    [anon_sym_loss] = ACTIONS(183),
    [anon_sym_construction] = ACTIONS(183),
    [anon_sym_wires] = ACTIONS(183),
    [anon_sym_valid] = ACTIONS(183),
    [anon_sym_accuracy] = ACTIONS(183),
    [anon_sym_rating] = ACTIONS(183),
    [anon_sym_voltage] = ACTIONS(183),
    [anon_sym_size] = ACTIONS(183),
    [anon_sym_conductor] = ACTIONS(183),
    [anon_sym_source] = ACTIONS(183),
    [anon_sym_recalled] = ACTIONS(183),
    [anon_sym_joins] = ACTIONS(183),
    [anon_sym_limit] = ACTIONS(183),
    [anon_sym_family] = ACTIONS(183),
    [anon_sym_bump] = ACTIONS(183),
    [anon_sym_return_DASHloss] = ACTIONS(183),
    [anon_sym_swr] = ACTIONS(183),
    [anon_sym_kind] = ACTIONS(183),
    [anon_sym_high] = ACTIONS(183),
    [anon_sym_low] = ACTIONS(183),
    [anon_sym_port] = ACTIONS(183),
    [anon_sym_from] = ACTIONS(183),
    [anon_sym_isolation] = ACTIONS(183),
    [anon_sym_ratio] = ACTIONS(183),
    [anon_sym_split] = ACTIONS(183),
    [anon_sym_tee] = ACTIONS(183),
    [anon_sym_reversed] = ACTIONS(183),
    [anon_sym_passes] = ACTIONS(183),
    [anon_sym_gain] = ACTIONS(183),
    [anon_sym_noise] = ACTIONS(183),
    [anon_sym_excess] = ACTIONS(183),
    [anon_sym_ways] = ACTIONS(183),
    [anon_sym_coupled] = ACTIONS(183),
    [anon_sym_calibrated] = ACTIONS(183),
    [anon_sym_scale] = ACTIONS(183),
    [anon_sym_resolution] = ACTIONS(183),
    [anon_sym_due] = ACTIONS(183),
    [anon_sym_linearity] = ACTIONS(183),
    [anon_sym_repeatability] = ACTIONS(183),
    [anon_sym_directivity] = ACTIONS(183),
    [anon_sym_certificate] = ACTIONS(183),
    [anon_sym_load] = ACTIONS(183),
    [anon_sym_read] = ACTIONS(183),
    [anon_sym_temperature] = ACTIONS(183),
    [anon_sym_generator] = ACTIONS(183),
    [anon_sym_drift] = ACTIONS(183),
    [anon_sym_piece] = ACTIONS(183),
    [anon_sym_readings] = ACTIONS(183),
    [anon_sym_resonance] = ACTIONS(183),
    [anon_sym_delay] = ACTIONS(183),
    [anon_sym_phase] = ACTIONS(183),
    [anon_sym_adapter] = ACTIONS(183),
    [anon_sym_position] = ACTIONS(183),
    [anon_sym_ground] = ACTIONS(183),
    [anon_sym_place] = ACTIONS(183),
    [anon_sym_under] = ACTIONS(183),
    [anon_sym_beside] = ACTIONS(183),
    [anon_sym_spot] = ACTIONS(183),
    [anon_sym_alone] = ACTIONS(183),
    [anon_sym_site_DASHnoise] = ACTIONS(183),
    [anon_sym_transmitter] = ACTIONS(183),
    [anon_sym_receiver] = ACTIONS(183),
    [anon_sym_transceiver] = ACTIONS(183),
    [anon_sym_run] = ACTIONS(183),
    [anon_sym_jumper] = ACTIONS(183),
    [anon_sym_tail] = ACTIONS(183),
    [anon_sym_pad] = ACTIONS(183),
    [anon_sym_filter] = ACTIONS(183),
    [anon_sym_isolator] = ACTIONS(183),
    [anon_sym_circulator] = ACTIONS(183),
    [anon_sym_protector] = ACTIONS(183),
    [anon_sym_switch] = ACTIONS(183),
    [anon_sym_coupler] = ACTIONS(183),
    [anon_sym_meter] = ACTIONS(183),
    [anon_sym_balun] = ACTIONS(183),
    [anon_sym_tuner] = ACTIONS(183),
    [anon_sym_duplexer] = ACTIONS(183),
    [anon_sym_diplexer] = ACTIONS(183),
    [anon_sym_combiner] = ACTIONS(183),
    [anon_sym_divider] = ACTIONS(183),
    [anon_sym_amplifier] = ACTIONS(183),
    [anon_sym_preamplifier] = ACTIONS(183),
    [anon_sym_antenna] = ACTIONS(183),
    [anon_sym_branches] = ACTIONS(183),
    [anon_sym_expect] = ACTIONS(183),
    [anon_sym_authority] = ACTIONS(183),
    [anon_sym_jurisdiction] = ACTIONS(183),
    [anon_sym_service] = ACTIONS(183),
    [anon_sym_edition] = ACTIONS(183),
    [anon_sym_dated] = ACTIONS(183),
    [anon_sym_until] = ACTIONS(183),
    [anon_sym_holder] = ACTIONS(183),
    [anon_sym_class] = ACTIONS(183),
    [anon_sym_ask] = ACTIONS(183),
    [anon_sym_threshold] = ACTIONS(183),
    [anon_sym_fixed] = ACTIONS(183),
    [anon_sym_condition] = ACTIONS(183),
    [anon_sym_reflection] = ACTIONS(183),
    [anon_sym_field] = ACTIONS(183),
    [anon_sym_hop] = ACTIONS(183),
    [anon_sym_profile] = ACTIONS(183),
    [anon_sym_distance] = ACTIONS(183),
    [anon_sym_k_DASHfactor] = ACTIONS(183),
    [anon_sym_need] = ACTIONS(183),
    [anon_sym_model] = ACTIONS(183),
    [anon_sym_coverage] = ACTIONS(183),
    [anon_sym_take] = ACTIONS(183),
    [anon_sym_put] = ACTIONS(183),
    [anon_sym_branch] = ACTIONS(183),
    [anon_sym_inner] = ACTIONS(183),
    [anon_sym_outer] = ACTIONS(183),
    [anon_sym_permittivity] = ACTIONS(183),
    [anon_sym_loss_DASHtangent] = ACTIONS(183),
    [anon_sym_strand] = ACTIONS(183),
    [anon_sym_strand_DASHdiameter] = ACTIONS(183),
    [anon_sym_braid] = ACTIONS(183),
    [anon_sym_resistivity] = ACTIONS(183),
    [anon_sym_inner_DASHresistivity] = ACTIONS(183),
    [anon_sym_outer_DASHresistivity] = ACTIONS(183),
    [anon_sym_diameter] = ACTIONS(183),
    [anon_sym_spacing] = ACTIONS(183),
    [anon_sym_baseline] = ACTIONS(183),
    [anon_sym_through] = ACTIONS(183),
    [anon_sym_open] = ACTIONS(183),
    [anon_sym_short] = ACTIONS(183),
    [anon_sym_equalise] = ACTIONS(183),
    [anon_sym_power] = ACTIONS(183),
    [anon_sym_mode] = ACTIONS(183),
    [anon_sym_duty] = ACTIONS(183),
    [anon_sym_keyed] = ACTIONS(183),
    [anon_sym_foldback] = ACTIONS(183),
    [anon_sym_bandwidth] = ACTIONS(183),
    [anon_sym_sensitivity] = ACTIONS(183),
    [anon_sym_blocking] = ACTIONS(183),
    [anon_sym_efficiency] = ACTIONS(183),
    [anon_sym_height] = ACTIONS(183),
    [anon_sym_pattern] = ACTIONS(183),
    [anon_sym_haat] = ACTIONS(183),
    [anon_sym_radius] = ACTIONS(183),
    [anon_sym_fails] = ACTIONS(183),
    [anon_sym_GHz] = ACTIONS(183),
    [anon_sym_Hz] = ACTIONS(183),
    [anon_sym_MHz] = ACTIONS(183),
    [anon_sym_above] = ACTIONS(183),
    [anon_sym_added] = ACTIONS(183),
    [anon_sym_after] = ACTIONS(183),
    [anon_sym_against] = ACTIONS(183),
    [anon_sym_agl] = ACTIONS(183),
    [anon_sym_allocated] = ACTIONS(183),
    [anon_sym_am] = ACTIONS(183),
    [anon_sym_ambient] = ACTIONS(183),
    [anon_sym_amsl] = ACTIONS(183),
    [anon_sym_apart] = ACTIONS(183),
    [anon_sym_at] = ACTIONS(183),
    [anon_sym_averaging] = ACTIONS(183),
    [anon_sym_below] = ACTIONS(183),
    [anon_sym_beyond] = ACTIONS(183),
    [anon_sym_blank] = ACTIONS(183),
    [anon_sym_bow] = ACTIONS(183),
    [anon_sym_bullington] = ACTIONS(183),
    [anon_sym_by] = ACTIONS(183),
    [anon_sym_carrier] = ACTIONS(183),
    [anon_sym_cascade] = ACTIONS(183),
    [anon_sym_city] = ACTIONS(183),
    [anon_sym_clad] = ACTIONS(183),
    [anon_sym_confidence] = ACTIONS(183),
    [anon_sym_corrected] = ACTIONS(183),
    [anon_sym_cw] = ACTIONS(183),
    [anon_sym_dB] = ACTIONS(183),
    [anon_sym_dBW] = ACTIONS(183),
    [anon_sym_dBd] = ACTIONS(183),
    [anon_sym_dBi] = ACTIONS(183),
    [anon_sym_dBm] = ACTIONS(183),
    [anon_sym_data] = ACTIONS(183),
    [anon_sym_date] = ACTIONS(183),
    [anon_sym_datum] = ACTIONS(183),
    [anon_sym_dc_DASHinput] = ACTIONS(183),
    [anon_sym_degrees] = ACTIONS(183),
    [anon_sym_delivered] = ACTIONS(183),
    [anon_sym_desense] = ACTIONS(183),
    [anon_sym_displayed] = ACTIONS(183),
    [anon_sym_dms] = ACTIONS(183),
    [anon_sym_down] = ACTIONS(183),
    [anon_sym_eirp] = ACTIONS(183),
    [anon_sym_elevation] = ACTIONS(183),
    [anon_sym_ends] = ACTIONS(183),
    [anon_sym_erp] = ACTIONS(183),
    [anon_sym_etrs89] = ACTIONS(183),
    [anon_sym_figure] = ACTIONS(183),
    [anon_sym_fm] = ACTIONS(183),
    [anon_sym_for] = ACTIONS(183),
    [anon_sym_forward] = ACTIONS(183),
    [anon_sym_free_DASHspace] = ACTIONS(183),
    [anon_sym_frequency] = ACTIONS(183),
    [anon_sym_ft] = ACTIONS(183),
    [anon_sym_full] = ACTIONS(183),
    [anon_sym_guess] = ACTIONS(183),
    [anon_sym_hata_DASHopen] = ACTIONS(183),
    [anon_sym_hata_DASHsuburban] = ACTIONS(183),
    [anon_sym_hata_DASHurban] = ACTIONS(183),
    [anon_sym_height_DASHamsl] = ACTIONS(183),
    [anon_sym_horizontal] = ACTIONS(183),
    [anon_sym_if] = ACTIONS(183),
    [anon_sym_in] = ACTIONS(183),
    [anon_sym_input] = ACTIONS(183),
    [anon_sym_instead] = ACTIONS(183),
    [anon_sym_k] = ACTIONS(183),
    [anon_sym_kHz] = ACTIONS(183),
    [anon_sym_kW] = ACTIONS(183),
    [anon_sym_km] = ACTIONS(183),
    [anon_sym_latitude] = ACTIONS(183),
    [anon_sym_longitude] = ACTIONS(183),
    [anon_sym_m] = ACTIONS(183),
    [anon_sym_mW] = ACTIONS(183),
    [anon_sym_maximum] = ACTIONS(183),
    [anon_sym_mean] = ACTIONS(183),
    [anon_sym_medium] = ACTIONS(183),
    [anon_sym_nad27] = ACTIONS(183),
    [anon_sym_nad83] = ACTIONS(183),
    [anon_sym_net] = ACTIONS(183),
    [anon_sym_no] = ACTIONS(183),
    [anon_sym_nominal] = ACTIONS(183),
    [anon_sym_occupational] = ACTIONS(183),
    [anon_sym_of] = ACTIONS(183),
    [anon_sym_offset] = ACTIONS(183),
    [anon_sym_on] = ACTIONS(183),
    [anon_sym_one_DASHedge] = ACTIONS(183),
    [anon_sym_out] = ACTIONS(183),
    [anon_sym_output] = ACTIONS(183),
    [anon_sym_over] = ACTIONS(183),
    [anon_sym_pep] = ACTIONS(183),
    [anon_sym_per] = ACTIONS(183),
    [anon_sym_places] = ACTIONS(183),
    [anon_sym_public] = ACTIONS(183),
    [anon_sym_quiet_DASHrural] = ACTIONS(183),
    [anon_sym_quieting] = ACTIONS(183),
    [anon_sym_rated] = ACTIONS(183),
    [anon_sym_reactance] = ACTIONS(183),
    [anon_sym_reading] = ACTIONS(183),
    [anon_sym_realized] = ACTIONS(183),
    [anon_sym_receive_DASHfrequency] = ACTIONS(183),
    [anon_sym_receive_DASHloss] = ACTIONS(183),
    [anon_sym_reference] = ACTIONS(183),
    [anon_sym_reflected] = ACTIONS(183),
    [anon_sym_rejects] = ACTIONS(183),
    [anon_sym_residential] = ACTIONS(183),
    [anon_sym_rural] = ACTIONS(183),
    [anon_sym_series] = ACTIONS(183),
    [anon_sym_shared] = ACTIONS(183),
    [anon_sym_sheet] = ACTIONS(183),
    [anon_sym_shunt] = ACTIONS(183),
    [anon_sym_sinad] = ACTIONS(183),
    [anon_sym_since] = ACTIONS(183),
    [anon_sym_snr] = ACTIONS(183),
    [anon_sym_spread] = ACTIONS(183),
    [anon_sym_ssb] = ACTIONS(183),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(183),
    [anon_sym_then] = ACTIONS(183),
    [anon_sym_title] = ACTIONS(183),
    [anon_sym_to] = ACTIONS(183),
    [anon_sym_total] = ACTIONS(183),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(183),
    [anon_sym_two_DASHray] = ACTIONS(183),
    [anon_sym_typical] = ACTIONS(183),
    [anon_sym_up] = ACTIONS(183),
    [anon_sym_vertical] = ACTIONS(183),
    [anon_sym_way] = ACTIONS(183),
    [anon_sym_wet] = ACTIONS(183),
    [anon_sym_wgs84] = ACTIONS(183),
    [anon_sym_with] = ACTIONS(183),
    [anon_sym_within] = ACTIONS(183),
    [anon_sym_yes] = ACTIONS(183),
    [anon_sym_COMMA] = ACTIONS(181),
    [anon_sym_EQ] = ACTIONS(181),
    [anon_sym_LPAREN] = ACTIONS(181),
    [anon_sym_DASH] = ACTIONS(183),
    [anon_sym_u2212] = ACTIONS(183),
    [anon_sym_u2013] = ACTIONS(183),
    [sym__glued] = ACTIONS(183),
    [sym_date] = ACTIONS(183),
    [sym_dms] = ACTIONS(181),
    [sym_number] = ACTIONS(183),
    [sym_digit_name] = ACTIONS(183),
    [sym_string] = ACTIONS(181),
    [sym_comment] = ACTIONS(3),
  },
  [34] = {
    [ts_builtin_sym_end] = ACTIONS(185),
    [sym_name] = ACTIONS(187),
    [aux_sym__end_token1] = ACTIONS(185),
    [anon_sym_SEMI] = ACTIONS(185),
    [anon_sym_LBRACE] = ACTIONS(185),
    [anon_sym_RBRACE] = ACTIONS(185),
    [anon_sym_use] = ACTIONS(187),
    [anon_sym_band] = ACTIONS(187),
    [anon_sym_let] = ACTIONS(187),
    [anon_sym_cable] = ACTIONS(187),
    [anon_sym_connector] = ACTIONS(187),
    [anon_sym_device] = ACTIONS(187),
    [anon_sym_instrument] = ACTIONS(187),
    [anon_sym_session] = ACTIONS(187),
    [anon_sym_station] = ACTIONS(187),
    [anon_sym_chain] = ACTIONS(187),
    [anon_sym_licence] = ACTIONS(187),
    [anon_sym_rules] = ACTIONS(187),
    [anon_sym_link] = ACTIONS(187),
    [anon_sym_variant] = ACTIONS(187),
    [anon_sym_accept] = ACTIONS(187),
    [anon_sym_transmit] = ACTIONS(187),
    [anon_sym_receive] = ACTIONS(187),
    [anon_sym_impedance] = ACTIONS(187),
    [anon_sym_velocity] = ACTIONS(187),
    [anon_sym_loss] = ACTIONS(187),
    [anon_sym_construction] = ACTIONS(187),
    [anon_sym_wires] = ACTIONS(187),
    [anon_sym_valid] = ACTIONS(187),
    [anon_sym_accuracy] = ACTIONS(187),
    [anon_sym_rating] = ACTIONS(187),
    [anon_sym_voltage] = ACTIONS(187),
    [anon_sym_size] = ACTIONS(187),
    [anon_sym_conductor] = ACTIONS(187),
    [anon_sym_source] = ACTIONS(187),
    [anon_sym_recalled] = ACTIONS(187),
    [anon_sym_joins] = ACTIONS(187),
    [anon_sym_limit] = ACTIONS(187),
    [anon_sym_family] = ACTIONS(187),
    [anon_sym_bump] = ACTIONS(187),
    [anon_sym_return_DASHloss] = ACTIONS(187),
    [anon_sym_swr] = ACTIONS(187),
    [anon_sym_kind] = ACTIONS(187),
    [anon_sym_high] = ACTIONS(187),
    [anon_sym_low] = ACTIONS(187),
    [anon_sym_port] = ACTIONS(187),
    [anon_sym_from] = ACTIONS(187),
    [anon_sym_isolation] = ACTIONS(187),
    [anon_sym_ratio] = ACTIONS(187),
    [anon_sym_split] = ACTIONS(187),
    [anon_sym_tee] = ACTIONS(187),
    [anon_sym_reversed] = ACTIONS(187),
    [anon_sym_passes] = ACTIONS(187),
    [anon_sym_gain] = ACTIONS(187),
    [anon_sym_noise] = ACTIONS(187),
    [anon_sym_excess] = ACTIONS(187),
    [anon_sym_ways] = ACTIONS(187),
    [anon_sym_coupled] = ACTIONS(187),
    [anon_sym_calibrated] = ACTIONS(187),
    [anon_sym_scale] = ACTIONS(187),
    [anon_sym_resolution] = ACTIONS(187),
    [anon_sym_due] = ACTIONS(187),
    [anon_sym_linearity] = ACTIONS(187),
    [anon_sym_repeatability] = ACTIONS(187),
    [anon_sym_directivity] = ACTIONS(187),
    [anon_sym_certificate] = ACTIONS(187),
    [anon_sym_load] = ACTIONS(187),
    [anon_sym_read] = ACTIONS(187),
    [anon_sym_temperature] = ACTIONS(187),
    [anon_sym_generator] = ACTIONS(187),
    [anon_sym_drift] = ACTIONS(187),
    [anon_sym_piece] = ACTIONS(187),
    [anon_sym_readings] = ACTIONS(187),
    [anon_sym_resonance] = ACTIONS(187),
    [anon_sym_delay] = ACTIONS(187),
    [anon_sym_phase] = ACTIONS(187),
    [anon_sym_adapter] = ACTIONS(187),
    [anon_sym_position] = ACTIONS(187),
    [anon_sym_ground] = ACTIONS(187),
    [anon_sym_place] = ACTIONS(187),
    [anon_sym_under] = ACTIONS(187),
    [anon_sym_beside] = ACTIONS(187),
    [anon_sym_spot] = ACTIONS(187),
    [anon_sym_alone] = ACTIONS(187),
    [anon_sym_site_DASHnoise] = ACTIONS(187),
    [anon_sym_transmitter] = ACTIONS(187),
    [anon_sym_receiver] = ACTIONS(187),
    [anon_sym_transceiver] = ACTIONS(187),
    [anon_sym_run] = ACTIONS(187),
    [anon_sym_jumper] = ACTIONS(187),
    [anon_sym_tail] = ACTIONS(187),
    [anon_sym_pad] = ACTIONS(187),
    [anon_sym_filter] = ACTIONS(187),
    [anon_sym_isolator] = ACTIONS(187),
    [anon_sym_circulator] = ACTIONS(187),
    [anon_sym_protector] = ACTIONS(187),
    [anon_sym_switch] = ACTIONS(187),
    [anon_sym_coupler] = ACTIONS(187),
    [anon_sym_meter] = ACTIONS(187),
    [anon_sym_balun] = ACTIONS(187),
    [anon_sym_tuner] = ACTIONS(187),
    [anon_sym_duplexer] = ACTIONS(187),
    [anon_sym_diplexer] = ACTIONS(187),
    [anon_sym_combiner] = ACTIONS(187),
    [anon_sym_divider] = ACTIONS(187),
    [anon_sym_amplifier] = ACTIONS(187),
    [anon_sym_preamplifier] = ACTIONS(187),
    [anon_sym_antenna] = ACTIONS(187),
    [anon_sym_branches] = ACTIONS(187),
    [anon_sym_expect] = ACTIONS(187),
    [anon_sym_authority] = ACTIONS(187),
    [anon_sym_jurisdiction] = ACTIONS(187),
    [anon_sym_service] = ACTIONS(187),
    [anon_sym_edition] = ACTIONS(187),
    [anon_sym_dated] = ACTIONS(187),
    [anon_sym_until] = ACTIONS(187),
    [anon_sym_holder] = ACTIONS(187),
    [anon_sym_class] = ACTIONS(187),
    [anon_sym_ask] = ACTIONS(187),
    [anon_sym_threshold] = ACTIONS(187),
    [anon_sym_fixed] = ACTIONS(187),
    [anon_sym_condition] = ACTIONS(187),
    [anon_sym_reflection] = ACTIONS(187),
    [anon_sym_field] = ACTIONS(187),
    [anon_sym_hop] = ACTIONS(187),
    [anon_sym_profile] = ACTIONS(187),
    [anon_sym_distance] = ACTIONS(187),
    [anon_sym_k_DASHfactor] = ACTIONS(187),
    [anon_sym_need] = ACTIONS(187),
    [anon_sym_model] = ACTIONS(187),
    [anon_sym_coverage] = ACTIONS(187),
    [anon_sym_take] = ACTIONS(187),
    [anon_sym_put] = ACTIONS(187),
    [anon_sym_branch] = ACTIONS(187),
    [anon_sym_inner] = ACTIONS(187),
    [anon_sym_outer] = ACTIONS(187),
    [anon_sym_permittivity] = ACTIONS(187),
    [anon_sym_loss_DASHtangent] = ACTIONS(187),
    [anon_sym_strand] = ACTIONS(187),
    [anon_sym_strand_DASHdiameter] = ACTIONS(187),
    [anon_sym_braid] = ACTIONS(187),
    [anon_sym_resistivity] = ACTIONS(187),
    [anon_sym_inner_DASHresistivity] = ACTIONS(187),
    [anon_sym_outer_DASHresistivity] = ACTIONS(187),
    [anon_sym_diameter] = ACTIONS(187),
    [anon_sym_spacing] = ACTIONS(187),
    [anon_sym_baseline] = ACTIONS(187),
    [anon_sym_through] = ACTIONS(187),
    [anon_sym_open] = ACTIONS(187),
    [anon_sym_short] = ACTIONS(187),
    [anon_sym_equalise] = ACTIONS(187),
    [anon_sym_power] = ACTIONS(187),
    [anon_sym_mode] = ACTIONS(187),
    [anon_sym_duty] = ACTIONS(187),
    [anon_sym_keyed] = ACTIONS(187),
    [anon_sym_foldback] = ACTIONS(187),
    [anon_sym_bandwidth] = ACTIONS(187),
    [anon_sym_sensitivity] = ACTIONS(187),
    [anon_sym_blocking] = ACTIONS(187),
    [anon_sym_efficiency] = ACTIONS(187),
    [anon_sym_height] = ACTIONS(187),
    [anon_sym_pattern] = ACTIONS(187),
    [anon_sym_haat] = ACTIONS(187),
    [anon_sym_radius] = ACTIONS(187),
    [anon_sym_fails] = ACTIONS(187),
    [anon_sym_GHz] = ACTIONS(187),
    [anon_sym_Hz] = ACTIONS(187),
    [anon_sym_MHz] = ACTIONS(187),
    [anon_sym_above] = ACTIONS(187),
    [anon_sym_added] = ACTIONS(187),
    [anon_sym_after] = ACTIONS(187),
    [anon_sym_against] = ACTIONS(187),
    [anon_sym_agl] = ACTIONS(187),
    [anon_sym_allocated] = ACTIONS(187),
    [anon_sym_am] = ACTIONS(187),
    [anon_sym_ambient] = ACTIONS(187),
    [anon_sym_amsl] = ACTIONS(187),
    [anon_sym_apart] = ACTIONS(187),
    [anon_sym_at] = ACTIONS(187),
    [anon_sym_averaging] = ACTIONS(187),
    [anon_sym_below] = ACTIONS(187),
    [anon_sym_beyond] = ACTIONS(187),
    [anon_sym_blank] = ACTIONS(187),
    [anon_sym_bow] = ACTIONS(187),
    [anon_sym_bullington] = ACTIONS(187),
    [anon_sym_by] = ACTIONS(187),
    [anon_sym_carrier] = ACTIONS(187),
    [anon_sym_cascade] = ACTIONS(187),
    [anon_sym_city] = ACTIONS(187),
    [anon_sym_clad] = ACTIONS(187),
    [anon_sym_confidence] = ACTIONS(187),
    [anon_sym_corrected] = ACTIONS(187),
    [anon_sym_cw] = ACTIONS(187),
    [anon_sym_dB] = ACTIONS(187),
    [anon_sym_dBW] = ACTIONS(187),
    [anon_sym_dBd] = ACTIONS(187),
    [anon_sym_dBi] = ACTIONS(187),
    [anon_sym_dBm] = ACTIONS(187),
    [anon_sym_data] = ACTIONS(187),
    [anon_sym_date] = ACTIONS(187),
    [anon_sym_datum] = ACTIONS(187),
    [anon_sym_dc_DASHinput] = ACTIONS(187),
    [anon_sym_degrees] = ACTIONS(187),
    [anon_sym_delivered] = ACTIONS(187),
    [anon_sym_desense] = ACTIONS(187),
    [anon_sym_displayed] = ACTIONS(187),
    [anon_sym_dms] = ACTIONS(187),
    [anon_sym_down] = ACTIONS(187),
    [anon_sym_eirp] = ACTIONS(187),
    [anon_sym_elevation] = ACTIONS(187),
    [anon_sym_ends] = ACTIONS(187),
    [anon_sym_erp] = ACTIONS(187),
    [anon_sym_etrs89] = ACTIONS(187),
    [anon_sym_figure] = ACTIONS(187),
    [anon_sym_fm] = ACTIONS(187),
    [anon_sym_for] = ACTIONS(187),
    [anon_sym_forward] = ACTIONS(187),
    [anon_sym_free_DASHspace] = ACTIONS(187),
    [anon_sym_frequency] = ACTIONS(187),
    [anon_sym_ft] = ACTIONS(187),
    [anon_sym_full] = ACTIONS(187),
    [anon_sym_guess] = ACTIONS(187),
    [anon_sym_hata_DASHopen] = ACTIONS(187),
    [anon_sym_hata_DASHsuburban] = ACTIONS(187),
    [anon_sym_hata_DASHurban] = ACTIONS(187),
    [anon_sym_height_DASHamsl] = ACTIONS(187),
    [anon_sym_horizontal] = ACTIONS(187),
    [anon_sym_if] = ACTIONS(187),
    [anon_sym_in] = ACTIONS(187),
    [anon_sym_input] = ACTIONS(187),
    [anon_sym_instead] = ACTIONS(187),
    [anon_sym_k] = ACTIONS(187),
    [anon_sym_kHz] = ACTIONS(187),
    [anon_sym_kW] = ACTIONS(187),
    [anon_sym_km] = ACTIONS(187),
    [anon_sym_latitude] = ACTIONS(187),
    [anon_sym_longitude] = ACTIONS(187),
    [anon_sym_m] = ACTIONS(187),
    [anon_sym_mW] = ACTIONS(187),
    [anon_sym_maximum] = ACTIONS(187),
    [anon_sym_mean] = ACTIONS(187),
    [anon_sym_medium] = ACTIONS(187),
    [anon_sym_nad27] = ACTIONS(187),
    [anon_sym_nad83] = ACTIONS(187),
    [anon_sym_net] = ACTIONS(187),
    [anon_sym_no] = ACTIONS(187),
    [anon_sym_nominal] = ACTIONS(187),
    [anon_sym_occupational] = ACTIONS(187),
    [anon_sym_of] = ACTIONS(187),
    [anon_sym_offset] = ACTIONS(187),
    [anon_sym_on] = ACTIONS(187),
    [anon_sym_one_DASHedge] = ACTIONS(187),
    [anon_sym_out] = ACTIONS(187),
    [anon_sym_output] = ACTIONS(187),
    [anon_sym_over] = ACTIONS(187),
    [anon_sym_pep] = ACTIONS(187),
    [anon_sym_per] = ACTIONS(187),
    [anon_sym_places] = ACTIONS(187),
    [anon_sym_public] = ACTIONS(187),
    [anon_sym_quiet_DASHrural] = ACTIONS(187),
    [anon_sym_quieting] = ACTIONS(187),
    [anon_sym_rated] = ACTIONS(187),
    [anon_sym_reactance] = ACTIONS(187),
    [anon_sym_reading] = ACTIONS(187),
    [anon_sym_realized] = ACTIONS(187),
    [anon_sym_receive_DASHfrequency] = ACTIONS(187),
    [anon_sym_receive_DASHloss] = ACTIONS(187),
    [anon_sym_reference] = ACTIONS(187),
    [anon_sym_reflected] = ACTIONS(187),
    [anon_sym_rejects] = ACTIONS(187),
    [anon_sym_residential] = ACTIONS(187),
    [anon_sym_rural] = ACTIONS(187),
    [anon_sym_series] = ACTIONS(187),
    [anon_sym_shared] = ACTIONS(187),
    [anon_sym_sheet] = ACTIONS(187),
    [anon_sym_shunt] = ACTIONS(187),
    [anon_sym_sinad] = ACTIONS(187),
    [anon_sym_since] = ACTIONS(187),
    [anon_sym_snr] = ACTIONS(187),
    [anon_sym_spread] = ACTIONS(187),
    [anon_sym_ssb] = ACTIONS(187),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(187),
    [anon_sym_then] = ACTIONS(187),
    [anon_sym_title] = ACTIONS(187),
    [anon_sym_to] = ACTIONS(187),
    [anon_sym_total] = ACTIONS(187),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(187),
    [anon_sym_two_DASHray] = ACTIONS(187),
    [anon_sym_typical] = ACTIONS(187),
    [anon_sym_up] = ACTIONS(187),
    [anon_sym_vertical] = ACTIONS(187),
    [anon_sym_way] = ACTIONS(187),
    [anon_sym_wet] = ACTIONS(187),
    [anon_sym_wgs84] = ACTIONS(187),
    [anon_sym_with] = ACTIONS(187),
    [anon_sym_within] = ACTIONS(187),
    [anon_sym_yes] = ACTIONS(187),
    [anon_sym_COMMA] = ACTIONS(185),
    [anon_sym_EQ] = ACTIONS(185),
    [anon_sym_LPAREN] = ACTIONS(185),
    [anon_sym_DASH] = ACTIONS(187),
    [anon_sym_u2212] = ACTIONS(187),
    [anon_sym_u2013] = ACTIONS(187),
    [sym__glued] = ACTIONS(187),
    [sym_date] = ACTIONS(187),
    [sym_dms] = ACTIONS(185),
    [sym_number] = ACTIONS(187),
    [sym_digit_name] = ACTIONS(187),
    [sym_string] = ACTIONS(185),
    [sym_comment] = ACTIONS(3),
  },
  [35] = {
    [ts_builtin_sym_end] = ACTIONS(189),
    [sym_name] = ACTIONS(191),
    [aux_sym__end_token1] = ACTIONS(189),
    [anon_sym_SEMI] = ACTIONS(189),
    [anon_sym_LBRACE] = ACTIONS(189),
    [anon_sym_RBRACE] = ACTIONS(189),
    [anon_sym_use] = ACTIONS(191),
    [anon_sym_band] = ACTIONS(191),
    [anon_sym_let] = ACTIONS(191),
    [anon_sym_cable] = ACTIONS(191),
    [anon_sym_connector] = ACTIONS(191),
    [anon_sym_device] = ACTIONS(191),
    [anon_sym_instrument] = ACTIONS(191),
    [anon_sym_session] = ACTIONS(191),
    [anon_sym_station] = ACTIONS(191),
    [anon_sym_chain] = ACTIONS(191),
    [anon_sym_licence] = ACTIONS(191),
    [anon_sym_rules] = ACTIONS(191),
    [anon_sym_link] = ACTIONS(191),
    [anon_sym_variant] = ACTIONS(191),
    [anon_sym_accept] = ACTIONS(191),
    [anon_sym_transmit] = ACTIONS(191),
    [anon_sym_receive] = ACTIONS(191),
    [anon_sym_impedance] = ACTIONS(191),
    [anon_sym_velocity] = ACTIONS(191),
    [anon_sym_loss] = ACTIONS(191),
    [anon_sym_construction] = ACTIONS(191),
    [anon_sym_wires] = ACTIONS(191),
    [anon_sym_valid] = ACTIONS(191),
    [anon_sym_accuracy] = ACTIONS(191),
    [anon_sym_rating] = ACTIONS(191),
    [anon_sym_voltage] = ACTIONS(191),
    [anon_sym_size] = ACTIONS(191),
    [anon_sym_conductor] = ACTIONS(191),
    [anon_sym_source] = ACTIONS(191),
    [anon_sym_recalled] = ACTIONS(191),
    [anon_sym_joins] = ACTIONS(191),
    [anon_sym_limit] = ACTIONS(191),
    [anon_sym_family] = ACTIONS(191),
    [anon_sym_bump] = ACTIONS(191),
    [anon_sym_return_DASHloss] = ACTIONS(191),
    [anon_sym_swr] = ACTIONS(191),
    [anon_sym_kind] = ACTIONS(191),
    [anon_sym_high] = ACTIONS(191),
    [anon_sym_low] = ACTIONS(191),
    [anon_sym_port] = ACTIONS(191),
    [anon_sym_from] = ACTIONS(191),
    [anon_sym_isolation] = ACTIONS(191),
    [anon_sym_ratio] = ACTIONS(191),
    [anon_sym_split] = ACTIONS(191),
    [anon_sym_tee] = ACTIONS(191),
    [anon_sym_reversed] = ACTIONS(191),
    [anon_sym_passes] = ACTIONS(191),
    [anon_sym_gain] = ACTIONS(191),
    [anon_sym_noise] = ACTIONS(191),
    [anon_sym_excess] = ACTIONS(191),
    [anon_sym_ways] = ACTIONS(191),
    [anon_sym_coupled] = ACTIONS(191),
    [anon_sym_calibrated] = ACTIONS(191),
    [anon_sym_scale] = ACTIONS(191),
    [anon_sym_resolution] = ACTIONS(191),
    [anon_sym_due] = ACTIONS(191),
    [anon_sym_linearity] = ACTIONS(191),
    [anon_sym_repeatability] = ACTIONS(191),
    [anon_sym_directivity] = ACTIONS(191),
    [anon_sym_certificate] = ACTIONS(191),
    [anon_sym_load] = ACTIONS(191),
    [anon_sym_read] = ACTIONS(191),
    [anon_sym_temperature] = ACTIONS(191),
    [anon_sym_generator] = ACTIONS(191),
    [anon_sym_drift] = ACTIONS(191),
    [anon_sym_piece] = ACTIONS(191),
    [anon_sym_readings] = ACTIONS(191),
    [anon_sym_resonance] = ACTIONS(191),
    [anon_sym_delay] = ACTIONS(191),
    [anon_sym_phase] = ACTIONS(191),
    [anon_sym_adapter] = ACTIONS(191),
    [anon_sym_position] = ACTIONS(191),
    [anon_sym_ground] = ACTIONS(191),
    [anon_sym_place] = ACTIONS(191),
    [anon_sym_under] = ACTIONS(191),
    [anon_sym_beside] = ACTIONS(191),
    [anon_sym_spot] = ACTIONS(191),
    [anon_sym_alone] = ACTIONS(191),
    [anon_sym_site_DASHnoise] = ACTIONS(191),
    [anon_sym_transmitter] = ACTIONS(191),
    [anon_sym_receiver] = ACTIONS(191),
    [anon_sym_transceiver] = ACTIONS(191),
    [anon_sym_run] = ACTIONS(191),
    [anon_sym_jumper] = ACTIONS(191),
    [anon_sym_tail] = ACTIONS(191),
    [anon_sym_pad] = ACTIONS(191),
    [anon_sym_filter] = ACTIONS(191),
    [anon_sym_isolator] = ACTIONS(191),
    [anon_sym_circulator] = ACTIONS(191),
    [anon_sym_protector] = ACTIONS(191),
    [anon_sym_switch] = ACTIONS(191),
    [anon_sym_coupler] = ACTIONS(191),
    [anon_sym_meter] = ACTIONS(191),
    [anon_sym_balun] = ACTIONS(191),
    [anon_sym_tuner] = ACTIONS(191),
    [anon_sym_duplexer] = ACTIONS(191),
    [anon_sym_diplexer] = ACTIONS(191),
    [anon_sym_combiner] = ACTIONS(191),
    [anon_sym_divider] = ACTIONS(191),
    [anon_sym_amplifier] = ACTIONS(191),
    [anon_sym_preamplifier] = ACTIONS(191),
    [anon_sym_antenna] = ACTIONS(191),
    [anon_sym_branches] = ACTIONS(191),
    [anon_sym_expect] = ACTIONS(191),
    [anon_sym_authority] = ACTIONS(191),
    [anon_sym_jurisdiction] = ACTIONS(191),
    [anon_sym_service] = ACTIONS(191),
    [anon_sym_edition] = ACTIONS(191),
    [anon_sym_dated] = ACTIONS(191),
    [anon_sym_until] = ACTIONS(191),
    [anon_sym_holder] = ACTIONS(191),
    [anon_sym_class] = ACTIONS(191),
    [anon_sym_ask] = ACTIONS(191),
    [anon_sym_threshold] = ACTIONS(191),
    [anon_sym_fixed] = ACTIONS(191),
    [anon_sym_condition] = ACTIONS(191),
    [anon_sym_reflection] = ACTIONS(191),
    [anon_sym_field] = ACTIONS(191),
    [anon_sym_hop] = ACTIONS(191),
    [anon_sym_profile] = ACTIONS(191),
    [anon_sym_distance] = ACTIONS(191),
    [anon_sym_k_DASHfactor] = ACTIONS(191),
    [anon_sym_need] = ACTIONS(191),
    [anon_sym_model] = ACTIONS(191),
    [anon_sym_coverage] = ACTIONS(191),
    [anon_sym_take] = ACTIONS(191),
    [anon_sym_put] = ACTIONS(191),
    [anon_sym_branch] = ACTIONS(191),
    [anon_sym_inner] = ACTIONS(191),
    [anon_sym_outer] = ACTIONS(191),
    [anon_sym_permittivity] = ACTIONS(191),
    [anon_sym_loss_DASHtangent] = ACTIONS(191),
    [anon_sym_strand] = ACTIONS(191),
    [anon_sym_strand_DASHdiameter] = ACTIONS(191),
    [anon_sym_braid] = ACTIONS(191),
    [anon_sym_resistivity] = ACTIONS(191),
    [anon_sym_inner_DASHresistivity] = ACTIONS(191),
    [anon_sym_outer_DASHresistivity] = ACTIONS(191),
    [anon_sym_diameter] = ACTIONS(191),
    [anon_sym_spacing] = ACTIONS(191),
    [anon_sym_baseline] = ACTIONS(191),
    [anon_sym_through] = ACTIONS(191),
    [anon_sym_open] = ACTIONS(191),
    [anon_sym_short] = ACTIONS(191),
    [anon_sym_equalise] = ACTIONS(191),
    [anon_sym_power] = ACTIONS(191),
    [anon_sym_mode] = ACTIONS(191),
    [anon_sym_duty] = ACTIONS(191),
    [anon_sym_keyed] = ACTIONS(191),
    [anon_sym_foldback] = ACTIONS(191),
    [anon_sym_bandwidth] = ACTIONS(191),
    [anon_sym_sensitivity] = ACTIONS(191),
    [anon_sym_blocking] = ACTIONS(191),
    [anon_sym_efficiency] = ACTIONS(191),
    [anon_sym_height] = ACTIONS(191),
    [anon_sym_pattern] = ACTIONS(191),
    [anon_sym_haat] = ACTIONS(191),
    [anon_sym_radius] = ACTIONS(191),
    [anon_sym_fails] = ACTIONS(191),
    [anon_sym_GHz] = ACTIONS(191),
    [anon_sym_Hz] = ACTIONS(191),
    [anon_sym_MHz] = ACTIONS(191),
    [anon_sym_above] = ACTIONS(191),
    [anon_sym_added] = ACTIONS(191),
    [anon_sym_after] = ACTIONS(191),
    [anon_sym_against] = ACTIONS(191),
    [anon_sym_agl] = ACTIONS(191),
    [anon_sym_allocated] = ACTIONS(191),
    [anon_sym_am] = ACTIONS(191),
    [anon_sym_ambient] = ACTIONS(191),
    [anon_sym_amsl] = ACTIONS(191),
    [anon_sym_apart] = ACTIONS(191),
    [anon_sym_at] = ACTIONS(191),
    [anon_sym_averaging] = ACTIONS(191),
    [anon_sym_below] = ACTIONS(191),
    [anon_sym_beyond] = ACTIONS(191),
    [anon_sym_blank] = ACTIONS(191),
    [anon_sym_bow] = ACTIONS(191),
    [anon_sym_bullington] = ACTIONS(191),
    [anon_sym_by] = ACTIONS(191),
    [anon_sym_carrier] = ACTIONS(191),
    [anon_sym_cascade] = ACTIONS(191),
    [anon_sym_city] = ACTIONS(191),
    [anon_sym_clad] = ACTIONS(191),
    [anon_sym_confidence] = ACTIONS(191),
    [anon_sym_corrected] = ACTIONS(191),
    [anon_sym_cw] = ACTIONS(191),
    [anon_sym_dB] = ACTIONS(191),
    [anon_sym_dBW] = ACTIONS(191),
    [anon_sym_dBd] = ACTIONS(191),
    [anon_sym_dBi] = ACTIONS(191),
    [anon_sym_dBm] = ACTIONS(191),
    [anon_sym_data] = ACTIONS(191),
    [anon_sym_date] = ACTIONS(191),
    [anon_sym_datum] = ACTIONS(191),
    [anon_sym_dc_DASHinput] = ACTIONS(191),
    [anon_sym_degrees] = ACTIONS(191),
    [anon_sym_delivered] = ACTIONS(191),
    [anon_sym_desense] = ACTIONS(191),
    [anon_sym_displayed] = ACTIONS(191),
    [anon_sym_dms] = ACTIONS(191),
    [anon_sym_down] = ACTIONS(191),
    [anon_sym_eirp] = ACTIONS(191),
    [anon_sym_elevation] = ACTIONS(191),
    [anon_sym_ends] = ACTIONS(191),
    [anon_sym_erp] = ACTIONS(191),
    [anon_sym_etrs89] = ACTIONS(191),
    [anon_sym_figure] = ACTIONS(191),
    [anon_sym_fm] = ACTIONS(191),
    [anon_sym_for] = ACTIONS(191),
    [anon_sym_forward] = ACTIONS(191),
    [anon_sym_free_DASHspace] = ACTIONS(191),
    [anon_sym_frequency] = ACTIONS(191),
    [anon_sym_ft] = ACTIONS(191),
    [anon_sym_full] = ACTIONS(191),
    [anon_sym_guess] = ACTIONS(191),
    [anon_sym_hata_DASHopen] = ACTIONS(191),
    [anon_sym_hata_DASHsuburban] = ACTIONS(191),
    [anon_sym_hata_DASHurban] = ACTIONS(191),
    [anon_sym_height_DASHamsl] = ACTIONS(191),
    [anon_sym_horizontal] = ACTIONS(191),
    [anon_sym_if] = ACTIONS(191),
    [anon_sym_in] = ACTIONS(191),
    [anon_sym_input] = ACTIONS(191),
    [anon_sym_instead] = ACTIONS(191),
    [anon_sym_k] = ACTIONS(191),
    [anon_sym_kHz] = ACTIONS(191),
    [anon_sym_kW] = ACTIONS(191),
    [anon_sym_km] = ACTIONS(191),
    [anon_sym_latitude] = ACTIONS(191),
    [anon_sym_longitude] = ACTIONS(191),
    [anon_sym_m] = ACTIONS(191),
    [anon_sym_mW] = ACTIONS(191),
    [anon_sym_maximum] = ACTIONS(191),
    [anon_sym_mean] = ACTIONS(191),
    [anon_sym_medium] = ACTIONS(191),
    [anon_sym_nad27] = ACTIONS(191),
    [anon_sym_nad83] = ACTIONS(191),
    [anon_sym_net] = ACTIONS(191),
    [anon_sym_no] = ACTIONS(191),
    [anon_sym_nominal] = ACTIONS(191),
    [anon_sym_occupational] = ACTIONS(191),
    [anon_sym_of] = ACTIONS(191),
    [anon_sym_offset] = ACTIONS(191),
    [anon_sym_on] = ACTIONS(191),
    [anon_sym_one_DASHedge] = ACTIONS(191),
    [anon_sym_out] = ACTIONS(191),
    [anon_sym_output] = ACTIONS(191),
    [anon_sym_over] = ACTIONS(191),
    [anon_sym_pep] = ACTIONS(191),
    [anon_sym_per] = ACTIONS(191),
    [anon_sym_places] = ACTIONS(191),
    [anon_sym_public] = ACTIONS(191),
    [anon_sym_quiet_DASHrural] = ACTIONS(191),
    [anon_sym_quieting] = ACTIONS(191),
    [anon_sym_rated] = ACTIONS(191),
    [anon_sym_reactance] = ACTIONS(191),
    [anon_sym_reading] = ACTIONS(191),
    [anon_sym_realized] = ACTIONS(191),
    [anon_sym_receive_DASHfrequency] = ACTIONS(191),
    [anon_sym_receive_DASHloss] = ACTIONS(191),
    [anon_sym_reference] = ACTIONS(191),
    [anon_sym_reflected] = ACTIONS(191),
    [anon_sym_rejects] = ACTIONS(191),
    [anon_sym_residential] = ACTIONS(191),
    [anon_sym_rural] = ACTIONS(191),
    [anon_sym_series] = ACTIONS(191),
    [anon_sym_shared] = ACTIONS(191),
    [anon_sym_sheet] = ACTIONS(191),
    [anon_sym_shunt] = ACTIONS(191),
    [anon_sym_sinad] = ACTIONS(191),
    [anon_sym_since] = ACTIONS(191),
    [anon_sym_snr] = ACTIONS(191),
    [anon_sym_spread] = ACTIONS(191),
    [anon_sym_ssb] = ACTIONS(191),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(191),
    [anon_sym_then] = ACTIONS(191),
    [anon_sym_title] = ACTIONS(191),
    [anon_sym_to] = ACTIONS(191),
    [anon_sym_total] = ACTIONS(191),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(191),
    [anon_sym_two_DASHray] = ACTIONS(191),
    [anon_sym_typical] = ACTIONS(191),
    [anon_sym_up] = ACTIONS(191),
    [anon_sym_vertical] = ACTIONS(191),
    [anon_sym_way] = ACTIONS(191),
    [anon_sym_wet] = ACTIONS(191),
    [anon_sym_wgs84] = ACTIONS(191),
    [anon_sym_with] = ACTIONS(191),
    [anon_sym_within] = ACTIONS(191),
    [anon_sym_yes] = ACTIONS(191),
    [anon_sym_COMMA] = ACTIONS(189),
    [anon_sym_EQ] = ACTIONS(189),
    [anon_sym_LPAREN] = ACTIONS(189),
    [anon_sym_DASH] = ACTIONS(191),
    [anon_sym_u2212] = ACTIONS(191),
    [anon_sym_u2013] = ACTIONS(191),
    [sym__glued] = ACTIONS(191),
    [sym_date] = ACTIONS(191),
    [sym_dms] = ACTIONS(189),
    [sym_number] = ACTIONS(191),
    [sym_digit_name] = ACTIONS(191),
    [sym_string] = ACTIONS(189),
    [sym_comment] = ACTIONS(3),
  },
  [36] = {
    [ts_builtin_sym_end] = ACTIONS(193),
    [sym_name] = ACTIONS(195),
    [aux_sym__end_token1] = ACTIONS(193),
    [anon_sym_SEMI] = ACTIONS(193),
    [anon_sym_LBRACE] = ACTIONS(193),
    [anon_sym_RBRACE] = ACTIONS(193),
    [anon_sym_use] = ACTIONS(195),
    [anon_sym_band] = ACTIONS(195),
    [anon_sym_let] = ACTIONS(195),
    [anon_sym_cable] = ACTIONS(195),
    [anon_sym_connector] = ACTIONS(195),
    [anon_sym_device] = ACTIONS(195),
    [anon_sym_instrument] = ACTIONS(195),
    [anon_sym_session] = ACTIONS(195),
    [anon_sym_station] = ACTIONS(195),
    [anon_sym_chain] = ACTIONS(195),
    [anon_sym_licence] = ACTIONS(195),
    [anon_sym_rules] = ACTIONS(195),
    [anon_sym_link] = ACTIONS(195),
    [anon_sym_variant] = ACTIONS(195),
    [anon_sym_accept] = ACTIONS(195),
    [anon_sym_transmit] = ACTIONS(195),
    [anon_sym_receive] = ACTIONS(195),
    [anon_sym_impedance] = ACTIONS(195),
    [anon_sym_velocity] = ACTIONS(195),
    [anon_sym_loss] = ACTIONS(195),
    [anon_sym_construction] = ACTIONS(195),
    [anon_sym_wires] = ACTIONS(195),
    [anon_sym_valid] = ACTIONS(195),
    [anon_sym_accuracy] = ACTIONS(195),
    [anon_sym_rating] = ACTIONS(195),
    [anon_sym_voltage] = ACTIONS(195),
    [anon_sym_size] = ACTIONS(195),
    [anon_sym_conductor] = ACTIONS(195),
    [anon_sym_source] = ACTIONS(195),
    [anon_sym_recalled] = ACTIONS(195),
    [anon_sym_joins] = ACTIONS(195),
    [anon_sym_limit] = ACTIONS(195),
    [anon_sym_family] = ACTIONS(195),
    [anon_sym_bump] = ACTIONS(195),
    [anon_sym_return_DASHloss] = ACTIONS(195),
    [anon_sym_swr] = ACTIONS(195),
    [anon_sym_kind] = ACTIONS(195),
    [anon_sym_high] = ACTIONS(195),
    [anon_sym_low] = ACTIONS(195),
    [anon_sym_port] = ACTIONS(195),
    [anon_sym_from] = ACTIONS(195),
    [anon_sym_isolation] = ACTIONS(195),
    [anon_sym_ratio] = ACTIONS(195),
    [anon_sym_split] = ACTIONS(195),
    [anon_sym_tee] = ACTIONS(195),
    [anon_sym_reversed] = ACTIONS(195),
    [anon_sym_passes] = ACTIONS(195),
    [anon_sym_gain] = ACTIONS(195),
    [anon_sym_noise] = ACTIONS(195),
    [anon_sym_excess] = ACTIONS(195),
    [anon_sym_ways] = ACTIONS(195),
    [anon_sym_coupled] = ACTIONS(195),
    [anon_sym_calibrated] = ACTIONS(195),
    [anon_sym_scale] = ACTIONS(195),
    [anon_sym_resolution] = ACTIONS(195),
    [anon_sym_due] = ACTIONS(195),
    [anon_sym_linearity] = ACTIONS(195),
    [anon_sym_repeatability] = ACTIONS(195),
    [anon_sym_directivity] = ACTIONS(195),
    [anon_sym_certificate] = ACTIONS(195),
    [anon_sym_load] = ACTIONS(195),
    [anon_sym_read] = ACTIONS(195),
    [anon_sym_temperature] = ACTIONS(195),
    [anon_sym_generator] = ACTIONS(195),
    [anon_sym_drift] = ACTIONS(195),
    [anon_sym_piece] = ACTIONS(195),
    [anon_sym_readings] = ACTIONS(195),
    [anon_sym_resonance] = ACTIONS(195),
    [anon_sym_delay] = ACTIONS(195),
    [anon_sym_phase] = ACTIONS(195),
    [anon_sym_adapter] = ACTIONS(195),
    [anon_sym_position] = ACTIONS(195),
    [anon_sym_ground] = ACTIONS(195),
    [anon_sym_place] = ACTIONS(195),
    [anon_sym_under] = ACTIONS(195),
    [anon_sym_beside] = ACTIONS(195),
    [anon_sym_spot] = ACTIONS(195),
    [anon_sym_alone] = ACTIONS(195),
    [anon_sym_site_DASHnoise] = ACTIONS(195),
    [anon_sym_transmitter] = ACTIONS(195),
    [anon_sym_receiver] = ACTIONS(195),
    [anon_sym_transceiver] = ACTIONS(195),
    [anon_sym_run] = ACTIONS(195),
    [anon_sym_jumper] = ACTIONS(195),
    [anon_sym_tail] = ACTIONS(195),
    [anon_sym_pad] = ACTIONS(195),
    [anon_sym_filter] = ACTIONS(195),
    [anon_sym_isolator] = ACTIONS(195),
    [anon_sym_circulator] = ACTIONS(195),
    [anon_sym_protector] = ACTIONS(195),
    [anon_sym_switch] = ACTIONS(195),
    [anon_sym_coupler] = ACTIONS(195),
    [anon_sym_meter] = ACTIONS(195),
    [anon_sym_balun] = ACTIONS(195),
    [anon_sym_tuner] = ACTIONS(195),
    [anon_sym_duplexer] = ACTIONS(195),
    [anon_sym_diplexer] = ACTIONS(195),
    [anon_sym_combiner] = ACTIONS(195),
    [anon_sym_divider] = ACTIONS(195),
    [anon_sym_amplifier] = ACTIONS(195),
    [anon_sym_preamplifier] = ACTIONS(195),
    [anon_sym_antenna] = ACTIONS(195),
    [anon_sym_branches] = ACTIONS(195),
    [anon_sym_expect] = ACTIONS(195),
    [anon_sym_authority] = ACTIONS(195),
    [anon_sym_jurisdiction] = ACTIONS(195),
    [anon_sym_service] = ACTIONS(195),
    [anon_sym_edition] = ACTIONS(195),
    [anon_sym_dated] = ACTIONS(195),
    [anon_sym_until] = ACTIONS(195),
    [anon_sym_holder] = ACTIONS(195),
    [anon_sym_class] = ACTIONS(195),
    [anon_sym_ask] = ACTIONS(195),
    [anon_sym_threshold] = ACTIONS(195),
    [anon_sym_fixed] = ACTIONS(195),
    [anon_sym_condition] = ACTIONS(195),
    [anon_sym_reflection] = ACTIONS(195),
    [anon_sym_field] = ACTIONS(195),
    [anon_sym_hop] = ACTIONS(195),
    [anon_sym_profile] = ACTIONS(195),
    [anon_sym_distance] = ACTIONS(195),
    [anon_sym_k_DASHfactor] = ACTIONS(195),
    [anon_sym_need] = ACTIONS(195),
    [anon_sym_model] = ACTIONS(195),
    [anon_sym_coverage] = ACTIONS(195),
    [anon_sym_take] = ACTIONS(195),
    [anon_sym_put] = ACTIONS(195),
    [anon_sym_branch] = ACTIONS(195),
    [anon_sym_inner] = ACTIONS(195),
    [anon_sym_outer] = ACTIONS(195),
    [anon_sym_permittivity] = ACTIONS(195),
    [anon_sym_loss_DASHtangent] = ACTIONS(195),
    [anon_sym_strand] = ACTIONS(195),
    [anon_sym_strand_DASHdiameter] = ACTIONS(195),
    [anon_sym_braid] = ACTIONS(195),
    [anon_sym_resistivity] = ACTIONS(195),
    [anon_sym_inner_DASHresistivity] = ACTIONS(195),
    [anon_sym_outer_DASHresistivity] = ACTIONS(195),
    [anon_sym_diameter] = ACTIONS(195),
    [anon_sym_spacing] = ACTIONS(195),
    [anon_sym_baseline] = ACTIONS(195),
    [anon_sym_through] = ACTIONS(195),
    [anon_sym_open] = ACTIONS(195),
    [anon_sym_short] = ACTIONS(195),
    [anon_sym_equalise] = ACTIONS(195),
    [anon_sym_power] = ACTIONS(195),
    [anon_sym_mode] = ACTIONS(195),
    [anon_sym_duty] = ACTIONS(195),
    [anon_sym_keyed] = ACTIONS(195),
    [anon_sym_foldback] = ACTIONS(195),
    [anon_sym_bandwidth] = ACTIONS(195),
    [anon_sym_sensitivity] = ACTIONS(195),
    [anon_sym_blocking] = ACTIONS(195),
    [anon_sym_efficiency] = ACTIONS(195),
    [anon_sym_height] = ACTIONS(195),
    [anon_sym_pattern] = ACTIONS(195),
    [anon_sym_haat] = ACTIONS(195),
    [anon_sym_radius] = ACTIONS(195),
    [anon_sym_fails] = ACTIONS(195),
    [anon_sym_GHz] = ACTIONS(195),
    [anon_sym_Hz] = ACTIONS(195),
    [anon_sym_MHz] = ACTIONS(195),
    [anon_sym_above] = ACTIONS(195),
    [anon_sym_added] = ACTIONS(195),
    [anon_sym_after] = ACTIONS(195),
    [anon_sym_against] = ACTIONS(195),
    [anon_sym_agl] = ACTIONS(195),
    [anon_sym_allocated] = ACTIONS(195),
    [anon_sym_am] = ACTIONS(195),
    [anon_sym_ambient] = ACTIONS(195),
    [anon_sym_amsl] = ACTIONS(195),
    [anon_sym_apart] = ACTIONS(195),
    [anon_sym_at] = ACTIONS(195),
    [anon_sym_averaging] = ACTIONS(195),
    [anon_sym_below] = ACTIONS(195),
    [anon_sym_beyond] = ACTIONS(195),
    [anon_sym_blank] = ACTIONS(195),
    [anon_sym_bow] = ACTIONS(195),
    [anon_sym_bullington] = ACTIONS(195),
    [anon_sym_by] = ACTIONS(195),
    [anon_sym_carrier] = ACTIONS(195),
    [anon_sym_cascade] = ACTIONS(195),
    [anon_sym_city] = ACTIONS(195),
    [anon_sym_clad] = ACTIONS(195),
    [anon_sym_confidence] = ACTIONS(195),
    [anon_sym_corrected] = ACTIONS(195),
    [anon_sym_cw] = ACTIONS(195),
    [anon_sym_dB] = ACTIONS(195),
    [anon_sym_dBW] = ACTIONS(195),
    [anon_sym_dBd] = ACTIONS(195),
    [anon_sym_dBi] = ACTIONS(195),
    [anon_sym_dBm] = ACTIONS(195),
    [anon_sym_data] = ACTIONS(195),
    [anon_sym_date] = ACTIONS(195),
    [anon_sym_datum] = ACTIONS(195),
    [anon_sym_dc_DASHinput] = ACTIONS(195),
    [anon_sym_degrees] = ACTIONS(195),
    [anon_sym_delivered] = ACTIONS(195),
    [anon_sym_desense] = ACTIONS(195),
    [anon_sym_displayed] = ACTIONS(195),
    [anon_sym_dms] = ACTIONS(195),
    [anon_sym_down] = ACTIONS(195),
    [anon_sym_eirp] = ACTIONS(195),
    [anon_sym_elevation] = ACTIONS(195),
    [anon_sym_ends] = ACTIONS(195),
    [anon_sym_erp] = ACTIONS(195),
    [anon_sym_etrs89] = ACTIONS(195),
    [anon_sym_figure] = ACTIONS(195),
    [anon_sym_fm] = ACTIONS(195),
    [anon_sym_for] = ACTIONS(195),
    [anon_sym_forward] = ACTIONS(195),
    [anon_sym_free_DASHspace] = ACTIONS(195),
    [anon_sym_frequency] = ACTIONS(195),
    [anon_sym_ft] = ACTIONS(195),
    [anon_sym_full] = ACTIONS(195),
    [anon_sym_guess] = ACTIONS(195),
    [anon_sym_hata_DASHopen] = ACTIONS(195),
    [anon_sym_hata_DASHsuburban] = ACTIONS(195),
    [anon_sym_hata_DASHurban] = ACTIONS(195),
    [anon_sym_height_DASHamsl] = ACTIONS(195),
    [anon_sym_horizontal] = ACTIONS(195),
    [anon_sym_if] = ACTIONS(195),
    [anon_sym_in] = ACTIONS(195),
    [anon_sym_input] = ACTIONS(195),
    [anon_sym_instead] = ACTIONS(195),
    [anon_sym_k] = ACTIONS(195),
    [anon_sym_kHz] = ACTIONS(195),
    [anon_sym_kW] = ACTIONS(195),
    [anon_sym_km] = ACTIONS(195),
    [anon_sym_latitude] = ACTIONS(195),
    [anon_sym_longitude] = ACTIONS(195),
    [anon_sym_m] = ACTIONS(195),
    [anon_sym_mW] = ACTIONS(195),
    [anon_sym_maximum] = ACTIONS(195),
    [anon_sym_mean] = ACTIONS(195),
    [anon_sym_medium] = ACTIONS(195),
    [anon_sym_nad27] = ACTIONS(195),
    [anon_sym_nad83] = ACTIONS(195),
    [anon_sym_net] = ACTIONS(195),
    [anon_sym_no] = ACTIONS(195),
    [anon_sym_nominal] = ACTIONS(195),
    [anon_sym_occupational] = ACTIONS(195),
    [anon_sym_of] = ACTIONS(195),
    [anon_sym_offset] = ACTIONS(195),
    [anon_sym_on] = ACTIONS(195),
    [anon_sym_one_DASHedge] = ACTIONS(195),
    [anon_sym_out] = ACTIONS(195),
    [anon_sym_output] = ACTIONS(195),
    [anon_sym_over] = ACTIONS(195),
    [anon_sym_pep] = ACTIONS(195),
    [anon_sym_per] = ACTIONS(195),
    [anon_sym_places] = ACTIONS(195),
    [anon_sym_public] = ACTIONS(195),
    [anon_sym_quiet_DASHrural] = ACTIONS(195),
    [anon_sym_quieting] = ACTIONS(195),
    [anon_sym_rated] = ACTIONS(195),
    [anon_sym_reactance] = ACTIONS(195),
    [anon_sym_reading] = ACTIONS(195),
    [anon_sym_realized] = ACTIONS(195),
    [anon_sym_receive_DASHfrequency] = ACTIONS(195),
    [anon_sym_receive_DASHloss] = ACTIONS(195),
    [anon_sym_reference] = ACTIONS(195),
    [anon_sym_reflected] = ACTIONS(195),
    [anon_sym_rejects] = ACTIONS(195),
    [anon_sym_residential] = ACTIONS(195),
    [anon_sym_rural] = ACTIONS(195),
    [anon_sym_series] = ACTIONS(195),
    [anon_sym_shared] = ACTIONS(195),
    [anon_sym_sheet] = ACTIONS(195),
    [anon_sym_shunt] = ACTIONS(195),
    [anon_sym_sinad] = ACTIONS(195),
    [anon_sym_since] = ACTIONS(195),
    [anon_sym_snr] = ACTIONS(195),
    [anon_sym_spread] = ACTIONS(195),
    [anon_sym_ssb] = ACTIONS(195),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(195),
    [anon_sym_then] = ACTIONS(195),
    [anon_sym_title] = ACTIONS(195),
    [anon_sym_to] = ACTIONS(195),
    [anon_sym_total] = ACTIONS(195),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(195),
    [anon_sym_two_DASHray] = ACTIONS(195),
    [anon_sym_typical] = ACTIONS(195),
    [anon_sym_up] = ACTIONS(195),
    [anon_sym_vertical] = ACTIONS(195),
    [anon_sym_way] = ACTIONS(195),
    [anon_sym_wet] = ACTIONS(195),
    [anon_sym_wgs84] = ACTIONS(195),
    [anon_sym_with] = ACTIONS(195),
    [anon_sym_within] = ACTIONS(195),
    [anon_sym_yes] = ACTIONS(195),
    [anon_sym_COMMA] = ACTIONS(193),
    [anon_sym_EQ] = ACTIONS(193),
    [anon_sym_LPAREN] = ACTIONS(193),
    [anon_sym_DASH] = ACTIONS(195),
    [anon_sym_u2212] = ACTIONS(195),
    [anon_sym_u2013] = ACTIONS(195),
    [sym__glued] = ACTIONS(195),
    [sym_date] = ACTIONS(195),
    [sym_dms] = ACTIONS(193),
    [sym_number] = ACTIONS(195),
    [sym_digit_name] = ACTIONS(195),
    [sym_string] = ACTIONS(193),
    [sym_comment] = ACTIONS(3),
  },
  [37] = {
    [ts_builtin_sym_end] = ACTIONS(197),
    [sym_name] = ACTIONS(199),
    [aux_sym__end_token1] = ACTIONS(197),
    [anon_sym_SEMI] = ACTIONS(197),
    [anon_sym_LBRACE] = ACTIONS(197),
    [anon_sym_RBRACE] = ACTIONS(197),
    [anon_sym_use] = ACTIONS(199),
    [anon_sym_band] = ACTIONS(199),
    [anon_sym_let] = ACTIONS(199),
    [anon_sym_cable] = ACTIONS(199),
    [anon_sym_connector] = ACTIONS(199),
    [anon_sym_device] = ACTIONS(199),
    [anon_sym_instrument] = ACTIONS(199),
    [anon_sym_session] = ACTIONS(199),
    [anon_sym_station] = ACTIONS(199),
    [anon_sym_chain] = ACTIONS(199),
    [anon_sym_licence] = ACTIONS(199),
    [anon_sym_rules] = ACTIONS(199),
    [anon_sym_link] = ACTIONS(199),
    [anon_sym_variant] = ACTIONS(199),
    [anon_sym_accept] = ACTIONS(199),
    [anon_sym_transmit] = ACTIONS(199),
    [anon_sym_receive] = ACTIONS(199),
    [anon_sym_impedance] = ACTIONS(199),
    [anon_sym_velocity] = ACTIONS(199),
    [anon_sym_loss] = ACTIONS(199),
    [anon_sym_construction] = ACTIONS(199),
    [anon_sym_wires] = ACTIONS(199),
    [anon_sym_valid] = ACTIONS(199),
    [anon_sym_accuracy] = ACTIONS(199),
    [anon_sym_rating] = ACTIONS(199),
    [anon_sym_voltage] = ACTIONS(199),
    [anon_sym_size] = ACTIONS(199),
    [anon_sym_conductor] = ACTIONS(199),
    [anon_sym_source] = ACTIONS(199),
    [anon_sym_recalled] = ACTIONS(199),
    [anon_sym_joins] = ACTIONS(199),
    [anon_sym_limit] = ACTIONS(199),
    [anon_sym_family] = ACTIONS(199),
    [anon_sym_bump] = ACTIONS(199),
    [anon_sym_return_DASHloss] = ACTIONS(199),
    [anon_sym_swr] = ACTIONS(199),
    [anon_sym_kind] = ACTIONS(199),
    [anon_sym_high] = ACTIONS(199),
    [anon_sym_low] = ACTIONS(199),
    [anon_sym_port] = ACTIONS(199),
    [anon_sym_from] = ACTIONS(199),
    [anon_sym_isolation] = ACTIONS(199),
    [anon_sym_ratio] = ACTIONS(199),
    [anon_sym_split] = ACTIONS(199),
    [anon_sym_tee] = ACTIONS(199),
    [anon_sym_reversed] = ACTIONS(199),
    [anon_sym_passes] = ACTIONS(199),
    [anon_sym_gain] = ACTIONS(199),
    [anon_sym_noise] = ACTIONS(199),
    [anon_sym_excess] = ACTIONS(199),
    [anon_sym_ways] = ACTIONS(199),
    [anon_sym_coupled] = ACTIONS(199),
    [anon_sym_calibrated] = ACTIONS(199),
    [anon_sym_scale] = ACTIONS(199),
    [anon_sym_resolution] = ACTIONS(199),
    [anon_sym_due] = ACTIONS(199),
    [anon_sym_linearity] = ACTIONS(199),
    [anon_sym_repeatability] = ACTIONS(199),
    [anon_sym_directivity] = ACTIONS(199),
    [anon_sym_certificate] = ACTIONS(199),
    [anon_sym_load] = ACTIONS(199),
    [anon_sym_read] = ACTIONS(199),
    [anon_sym_temperature] = ACTIONS(199),
    [anon_sym_generator] = ACTIONS(199),
    [anon_sym_drift] = ACTIONS(199),
    [anon_sym_piece] = ACTIONS(199),
    [anon_sym_readings] = ACTIONS(199),
    [anon_sym_resonance] = ACTIONS(199),
    [anon_sym_delay] = ACTIONS(199),
    [anon_sym_phase] = ACTIONS(199),
    [anon_sym_adapter] = ACTIONS(199),
    [anon_sym_position] = ACTIONS(199),
    [anon_sym_ground] = ACTIONS(199),
    [anon_sym_place] = ACTIONS(199),
    [anon_sym_under] = ACTIONS(199),
    [anon_sym_beside] = ACTIONS(199),
    [anon_sym_spot] = ACTIONS(199),
    [anon_sym_alone] = ACTIONS(199),
    [anon_sym_site_DASHnoise] = ACTIONS(199),
    [anon_sym_transmitter] = ACTIONS(199),
    [anon_sym_receiver] = ACTIONS(199),
    [anon_sym_transceiver] = ACTIONS(199),
    [anon_sym_run] = ACTIONS(199),
    [anon_sym_jumper] = ACTIONS(199),
    [anon_sym_tail] = ACTIONS(199),
    [anon_sym_pad] = ACTIONS(199),
    [anon_sym_filter] = ACTIONS(199),
    [anon_sym_isolator] = ACTIONS(199),
    [anon_sym_circulator] = ACTIONS(199),
    [anon_sym_protector] = ACTIONS(199),
    [anon_sym_switch] = ACTIONS(199),
    [anon_sym_coupler] = ACTIONS(199),
    [anon_sym_meter] = ACTIONS(199),
    [anon_sym_balun] = ACTIONS(199),
    [anon_sym_tuner] = ACTIONS(199),
    [anon_sym_duplexer] = ACTIONS(199),
    [anon_sym_diplexer] = ACTIONS(199),
    [anon_sym_combiner] = ACTIONS(199),
    [anon_sym_divider] = ACTIONS(199),
    [anon_sym_amplifier] = ACTIONS(199),
    [anon_sym_preamplifier] = ACTIONS(199),
    [anon_sym_antenna] = ACTIONS(199),
    [anon_sym_branches] = ACTIONS(199),
    [anon_sym_expect] = ACTIONS(199),
    [anon_sym_authority] = ACTIONS(199),
    [anon_sym_jurisdiction] = ACTIONS(199),
    [anon_sym_service] = ACTIONS(199),
    [anon_sym_edition] = ACTIONS(199),
    [anon_sym_dated] = ACTIONS(199),
    [anon_sym_until] = ACTIONS(199),
    [anon_sym_holder] = ACTIONS(199),
    [anon_sym_class] = ACTIONS(199),
    [anon_sym_ask] = ACTIONS(199),
    [anon_sym_threshold] = ACTIONS(199),
    [anon_sym_fixed] = ACTIONS(199),
    [anon_sym_condition] = ACTIONS(199),
    [anon_sym_reflection] = ACTIONS(199),
    [anon_sym_field] = ACTIONS(199),
    [anon_sym_hop] = ACTIONS(199),
    [anon_sym_profile] = ACTIONS(199),
    [anon_sym_distance] = ACTIONS(199),
    [anon_sym_k_DASHfactor] = ACTIONS(199),
    [anon_sym_need] = ACTIONS(199),
    [anon_sym_model] = ACTIONS(199),
    [anon_sym_coverage] = ACTIONS(199),
    [anon_sym_take] = ACTIONS(199),
    [anon_sym_put] = ACTIONS(199),
    [anon_sym_branch] = ACTIONS(199),
    [anon_sym_inner] = ACTIONS(199),
    [anon_sym_outer] = ACTIONS(199),
    [anon_sym_permittivity] = ACTIONS(199),
    [anon_sym_loss_DASHtangent] = ACTIONS(199),
    [anon_sym_strand] = ACTIONS(199),
    [anon_sym_strand_DASHdiameter] = ACTIONS(199),
    [anon_sym_braid] = ACTIONS(199),
    [anon_sym_resistivity] = ACTIONS(199),
    [anon_sym_inner_DASHresistivity] = ACTIONS(199),
    [anon_sym_outer_DASHresistivity] = ACTIONS(199),
    [anon_sym_diameter] = ACTIONS(199),
    [anon_sym_spacing] = ACTIONS(199),
    [anon_sym_baseline] = ACTIONS(199),
    [anon_sym_through] = ACTIONS(199),
    [anon_sym_open] = ACTIONS(199),
    [anon_sym_short] = ACTIONS(199),
    [anon_sym_equalise] = ACTIONS(199),
    [anon_sym_power] = ACTIONS(199),
    [anon_sym_mode] = ACTIONS(199),
    [anon_sym_duty] = ACTIONS(199),
    [anon_sym_keyed] = ACTIONS(199),
    [anon_sym_foldback] = ACTIONS(199),
    [anon_sym_bandwidth] = ACTIONS(199),
    [anon_sym_sensitivity] = ACTIONS(199),
    [anon_sym_blocking] = ACTIONS(199),
    [anon_sym_efficiency] = ACTIONS(199),
    [anon_sym_height] = ACTIONS(199),
    [anon_sym_pattern] = ACTIONS(199),
    [anon_sym_haat] = ACTIONS(199),
    [anon_sym_radius] = ACTIONS(199),
    [anon_sym_fails] = ACTIONS(199),
    [anon_sym_GHz] = ACTIONS(199),
    [anon_sym_Hz] = ACTIONS(199),
    [anon_sym_MHz] = ACTIONS(199),
    [anon_sym_above] = ACTIONS(199),
    [anon_sym_added] = ACTIONS(199),
    [anon_sym_after] = ACTIONS(199),
    [anon_sym_against] = ACTIONS(199),
    [anon_sym_agl] = ACTIONS(199),
    [anon_sym_allocated] = ACTIONS(199),
    [anon_sym_am] = ACTIONS(199),
    [anon_sym_ambient] = ACTIONS(199),
    [anon_sym_amsl] = ACTIONS(199),
    [anon_sym_apart] = ACTIONS(199),
    [anon_sym_at] = ACTIONS(199),
    [anon_sym_averaging] = ACTIONS(199),
    [anon_sym_below] = ACTIONS(199),
    [anon_sym_beyond] = ACTIONS(199),
    [anon_sym_blank] = ACTIONS(199),
    [anon_sym_bow] = ACTIONS(199),
    [anon_sym_bullington] = ACTIONS(199),
    [anon_sym_by] = ACTIONS(199),
    [anon_sym_carrier] = ACTIONS(199),
    [anon_sym_cascade] = ACTIONS(199),
    [anon_sym_city] = ACTIONS(199),
    [anon_sym_clad] = ACTIONS(199),
    [anon_sym_confidence] = ACTIONS(199),
    [anon_sym_corrected] = ACTIONS(199),
    [anon_sym_cw] = ACTIONS(199),
    [anon_sym_dB] = ACTIONS(199),
    [anon_sym_dBW] = ACTIONS(199),
    [anon_sym_dBd] = ACTIONS(199),
    [anon_sym_dBi] = ACTIONS(199),
    [anon_sym_dBm] = ACTIONS(199),
    [anon_sym_data] = ACTIONS(199),
    [anon_sym_date] = ACTIONS(199),
    [anon_sym_datum] = ACTIONS(199),
    [anon_sym_dc_DASHinput] = ACTIONS(199),
    [anon_sym_degrees] = ACTIONS(199),
    [anon_sym_delivered] = ACTIONS(199),
    [anon_sym_desense] = ACTIONS(199),
    [anon_sym_displayed] = ACTIONS(199),
    [anon_sym_dms] = ACTIONS(199),
    [anon_sym_down] = ACTIONS(199),
    [anon_sym_eirp] = ACTIONS(199),
    [anon_sym_elevation] = ACTIONS(199),
    [anon_sym_ends] = ACTIONS(199),
    [anon_sym_erp] = ACTIONS(199),
    [anon_sym_etrs89] = ACTIONS(199),
    [anon_sym_figure] = ACTIONS(199),
    [anon_sym_fm] = ACTIONS(199),
    [anon_sym_for] = ACTIONS(199),
    [anon_sym_forward] = ACTIONS(199),
    [anon_sym_free_DASHspace] = ACTIONS(199),
    [anon_sym_frequency] = ACTIONS(199),
    [anon_sym_ft] = ACTIONS(199),
    [anon_sym_full] = ACTIONS(199),
    [anon_sym_guess] = ACTIONS(199),
    [anon_sym_hata_DASHopen] = ACTIONS(199),
    [anon_sym_hata_DASHsuburban] = ACTIONS(199),
    [anon_sym_hata_DASHurban] = ACTIONS(199),
    [anon_sym_height_DASHamsl] = ACTIONS(199),
    [anon_sym_horizontal] = ACTIONS(199),
    [anon_sym_if] = ACTIONS(199),
    [anon_sym_in] = ACTIONS(199),
    [anon_sym_input] = ACTIONS(199),
    [anon_sym_instead] = ACTIONS(199),
    [anon_sym_k] = ACTIONS(199),
    [anon_sym_kHz] = ACTIONS(199),
    [anon_sym_kW] = ACTIONS(199),
    [anon_sym_km] = ACTIONS(199),
    [anon_sym_latitude] = ACTIONS(199),
    [anon_sym_longitude] = ACTIONS(199),
    [anon_sym_m] = ACTIONS(199),
    [anon_sym_mW] = ACTIONS(199),
    [anon_sym_maximum] = ACTIONS(199),
    [anon_sym_mean] = ACTIONS(199),
    [anon_sym_medium] = ACTIONS(199),
    [anon_sym_nad27] = ACTIONS(199),
    [anon_sym_nad83] = ACTIONS(199),
    [anon_sym_net] = ACTIONS(199),
    [anon_sym_no] = ACTIONS(199),
    [anon_sym_nominal] = ACTIONS(199),
    [anon_sym_occupational] = ACTIONS(199),
    [anon_sym_of] = ACTIONS(199),
    [anon_sym_offset] = ACTIONS(199),
    [anon_sym_on] = ACTIONS(199),
    [anon_sym_one_DASHedge] = ACTIONS(199),
    [anon_sym_out] = ACTIONS(199),
    [anon_sym_output] = ACTIONS(199),
    [anon_sym_over] = ACTIONS(199),
    [anon_sym_pep] = ACTIONS(199),
    [anon_sym_per] = ACTIONS(199),
    [anon_sym_places] = ACTIONS(199),
    [anon_sym_public] = ACTIONS(199),
    [anon_sym_quiet_DASHrural] = ACTIONS(199),
    [anon_sym_quieting] = ACTIONS(199),
    [anon_sym_rated] = ACTIONS(199),
    [anon_sym_reactance] = ACTIONS(199),
    [anon_sym_reading] = ACTIONS(199),
    [anon_sym_realized] = ACTIONS(199),
    [anon_sym_receive_DASHfrequency] = ACTIONS(199),
    [anon_sym_receive_DASHloss] = ACTIONS(199),
    [anon_sym_reference] = ACTIONS(199),
    [anon_sym_reflected] = ACTIONS(199),
    [anon_sym_rejects] = ACTIONS(199),
    [anon_sym_residential] = ACTIONS(199),
    [anon_sym_rural] = ACTIONS(199),
    [anon_sym_series] = ACTIONS(199),
    [anon_sym_shared] = ACTIONS(199),
    [anon_sym_sheet] = ACTIONS(199),
    [anon_sym_shunt] = ACTIONS(199),
    [anon_sym_sinad] = ACTIONS(199),
    [anon_sym_since] = ACTIONS(199),
    [anon_sym_snr] = ACTIONS(199),
    [anon_sym_spread] = ACTIONS(199),
    [anon_sym_ssb] = ACTIONS(199),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(199),
    [anon_sym_then] = ACTIONS(199),
    [anon_sym_title] = ACTIONS(199),
    [anon_sym_to] = ACTIONS(199),
    [anon_sym_total] = ACTIONS(199),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(199),
    [anon_sym_two_DASHray] = ACTIONS(199),
    [anon_sym_typical] = ACTIONS(199),
    [anon_sym_up] = ACTIONS(199),
    [anon_sym_vertical] = ACTIONS(199),
    [anon_sym_way] = ACTIONS(199),
    [anon_sym_wet] = ACTIONS(199),
    [anon_sym_wgs84] = ACTIONS(199),
    [anon_sym_with] = ACTIONS(199),
    [anon_sym_within] = ACTIONS(199),
    [anon_sym_yes] = ACTIONS(199),
    [anon_sym_COMMA] = ACTIONS(197),
    [anon_sym_EQ] = ACTIONS(197),
    [anon_sym_LPAREN] = ACTIONS(197),
    [anon_sym_DASH] = ACTIONS(199),
    [anon_sym_u2212] = ACTIONS(199),
    [anon_sym_u2013] = ACTIONS(199),
    [sym__glued] = ACTIONS(199),
    [sym_date] = ACTIONS(199),
    [sym_dms] = ACTIONS(197),
    [sym_number] = ACTIONS(199),
    [sym_digit_name] = ACTIONS(199),
    [sym_string] = ACTIONS(197),
    [sym_comment] = ACTIONS(3),
  },
  [38] = {
    [ts_builtin_sym_end] = ACTIONS(201),
    [sym_name] = ACTIONS(203),
    [aux_sym__end_token1] = ACTIONS(201),
    [anon_sym_SEMI] = ACTIONS(201),
    [anon_sym_RBRACE] = ACTIONS(201),
    [anon_sym_use] = ACTIONS(203),
    [anon_sym_band] = ACTIONS(203),
    [anon_sym_let] = ACTIONS(203),
    [anon_sym_cable] = ACTIONS(203),
    [anon_sym_connector] = ACTIONS(203),
    [anon_sym_device] = ACTIONS(203),
    [anon_sym_instrument] = ACTIONS(203),
    [anon_sym_session] = ACTIONS(203),
    [anon_sym_station] = ACTIONS(203),
    [anon_sym_chain] = ACTIONS(203),
    [anon_sym_licence] = ACTIONS(203),
    [anon_sym_rules] = ACTIONS(203),
    [anon_sym_link] = ACTIONS(203),
    [anon_sym_variant] = ACTIONS(203),
    [anon_sym_accept] = ACTIONS(203),
    [anon_sym_transmit] = ACTIONS(203),
    [anon_sym_receive] = ACTIONS(203),
    [anon_sym_impedance] = ACTIONS(203),
    [anon_sym_velocity] = ACTIONS(203),
    [anon_sym_loss] = ACTIONS(203),
    [anon_sym_construction] = ACTIONS(203),
    [anon_sym_wires] = ACTIONS(203),
    [anon_sym_valid] = ACTIONS(203),
    [anon_sym_accuracy] = ACTIONS(203),
    [anon_sym_rating] = ACTIONS(203),
    [anon_sym_voltage] = ACTIONS(203),
    [anon_sym_size] = ACTIONS(203),
    [anon_sym_conductor] = ACTIONS(203),
    [anon_sym_source] = ACTIONS(203),
    [anon_sym_recalled] = ACTIONS(203),
    [anon_sym_joins] = ACTIONS(203),
    [anon_sym_limit] = ACTIONS(203),
    [anon_sym_family] = ACTIONS(203),
    [anon_sym_bump] = ACTIONS(203),
    [anon_sym_return_DASHloss] = ACTIONS(203),
    [anon_sym_swr] = ACTIONS(203),
    [anon_sym_kind] = ACTIONS(203),
    [anon_sym_high] = ACTIONS(203),
    [anon_sym_low] = ACTIONS(203),
    [anon_sym_port] = ACTIONS(203),
    [anon_sym_from] = ACTIONS(203),
    [anon_sym_isolation] = ACTIONS(203),
    [anon_sym_ratio] = ACTIONS(203),
    [anon_sym_split] = ACTIONS(203),
    [anon_sym_tee] = ACTIONS(203),
    [anon_sym_reversed] = ACTIONS(203),
    [anon_sym_passes] = ACTIONS(203),
    [anon_sym_gain] = ACTIONS(203),
    [anon_sym_noise] = ACTIONS(203),
    [anon_sym_excess] = ACTIONS(203),
    [anon_sym_ways] = ACTIONS(203),
    [anon_sym_coupled] = ACTIONS(203),
    [anon_sym_calibrated] = ACTIONS(203),
    [anon_sym_scale] = ACTIONS(203),
    [anon_sym_resolution] = ACTIONS(203),
    [anon_sym_due] = ACTIONS(203),
    [anon_sym_linearity] = ACTIONS(203),
    [anon_sym_repeatability] = ACTIONS(203),
    [anon_sym_directivity] = ACTIONS(203),
    [anon_sym_certificate] = ACTIONS(203),
    [anon_sym_load] = ACTIONS(203),
    [anon_sym_read] = ACTIONS(203),
    [anon_sym_temperature] = ACTIONS(203),
    [anon_sym_generator] = ACTIONS(203),
    [anon_sym_drift] = ACTIONS(203),
    [anon_sym_piece] = ACTIONS(203),
    [anon_sym_readings] = ACTIONS(203),
    [anon_sym_resonance] = ACTIONS(203),
    [anon_sym_delay] = ACTIONS(203),
    [anon_sym_phase] = ACTIONS(203),
    [anon_sym_adapter] = ACTIONS(203),
    [anon_sym_position] = ACTIONS(203),
    [anon_sym_ground] = ACTIONS(203),
    [anon_sym_place] = ACTIONS(203),
    [anon_sym_under] = ACTIONS(203),
    [anon_sym_beside] = ACTIONS(203),
    [anon_sym_spot] = ACTIONS(203),
    [anon_sym_alone] = ACTIONS(203),
    [anon_sym_site_DASHnoise] = ACTIONS(203),
    [anon_sym_transmitter] = ACTIONS(203),
    [anon_sym_receiver] = ACTIONS(203),
    [anon_sym_transceiver] = ACTIONS(203),
    [anon_sym_run] = ACTIONS(203),
    [anon_sym_jumper] = ACTIONS(203),
    [anon_sym_tail] = ACTIONS(203),
    [anon_sym_pad] = ACTIONS(203),
    [anon_sym_filter] = ACTIONS(203),
    [anon_sym_isolator] = ACTIONS(203),
    [anon_sym_circulator] = ACTIONS(203),
    [anon_sym_protector] = ACTIONS(203),
    [anon_sym_switch] = ACTIONS(203),
    [anon_sym_coupler] = ACTIONS(203),
    [anon_sym_meter] = ACTIONS(203),
    [anon_sym_balun] = ACTIONS(203),
    [anon_sym_tuner] = ACTIONS(203),
    [anon_sym_duplexer] = ACTIONS(203),
    [anon_sym_diplexer] = ACTIONS(203),
    [anon_sym_combiner] = ACTIONS(203),
    [anon_sym_divider] = ACTIONS(203),
    [anon_sym_amplifier] = ACTIONS(203),
    [anon_sym_preamplifier] = ACTIONS(203),
    [anon_sym_antenna] = ACTIONS(203),
    [anon_sym_branches] = ACTIONS(203),
    [anon_sym_expect] = ACTIONS(203),
    [anon_sym_authority] = ACTIONS(203),
    [anon_sym_jurisdiction] = ACTIONS(203),
    [anon_sym_service] = ACTIONS(203),
    [anon_sym_edition] = ACTIONS(203),
    [anon_sym_dated] = ACTIONS(203),
    [anon_sym_until] = ACTIONS(203),
    [anon_sym_holder] = ACTIONS(203),
    [anon_sym_class] = ACTIONS(203),
    [anon_sym_ask] = ACTIONS(203),
    [anon_sym_threshold] = ACTIONS(203),
    [anon_sym_fixed] = ACTIONS(203),
    [anon_sym_condition] = ACTIONS(203),
    [anon_sym_reflection] = ACTIONS(203),
    [anon_sym_field] = ACTIONS(203),
    [anon_sym_hop] = ACTIONS(203),
    [anon_sym_profile] = ACTIONS(203),
    [anon_sym_distance] = ACTIONS(203),
    [anon_sym_k_DASHfactor] = ACTIONS(203),
    [anon_sym_need] = ACTIONS(203),
    [anon_sym_model] = ACTIONS(203),
    [anon_sym_coverage] = ACTIONS(203),
    [anon_sym_take] = ACTIONS(203),
    [anon_sym_put] = ACTIONS(203),
    [anon_sym_branch] = ACTIONS(203),
    [anon_sym_inner] = ACTIONS(203),
    [anon_sym_outer] = ACTIONS(203),
    [anon_sym_permittivity] = ACTIONS(203),
    [anon_sym_loss_DASHtangent] = ACTIONS(203),
    [anon_sym_strand] = ACTIONS(203),
    [anon_sym_strand_DASHdiameter] = ACTIONS(203),
    [anon_sym_braid] = ACTIONS(203),
    [anon_sym_resistivity] = ACTIONS(203),
    [anon_sym_inner_DASHresistivity] = ACTIONS(203),
    [anon_sym_outer_DASHresistivity] = ACTIONS(203),
    [anon_sym_diameter] = ACTIONS(203),
    [anon_sym_spacing] = ACTIONS(203),
    [anon_sym_baseline] = ACTIONS(203),
    [anon_sym_through] = ACTIONS(203),
    [anon_sym_open] = ACTIONS(203),
    [anon_sym_short] = ACTIONS(203),
    [anon_sym_equalise] = ACTIONS(203),
    [anon_sym_power] = ACTIONS(203),
    [anon_sym_mode] = ACTIONS(203),
    [anon_sym_duty] = ACTIONS(203),
    [anon_sym_keyed] = ACTIONS(203),
    [anon_sym_foldback] = ACTIONS(203),
    [anon_sym_bandwidth] = ACTIONS(203),
    [anon_sym_sensitivity] = ACTIONS(203),
    [anon_sym_blocking] = ACTIONS(203),
    [anon_sym_efficiency] = ACTIONS(203),
    [anon_sym_height] = ACTIONS(203),
    [anon_sym_pattern] = ACTIONS(203),
    [anon_sym_haat] = ACTIONS(203),
    [anon_sym_radius] = ACTIONS(203),
    [anon_sym_fails] = ACTIONS(203),
    [anon_sym_GHz] = ACTIONS(203),
    [anon_sym_Hz] = ACTIONS(203),
    [anon_sym_MHz] = ACTIONS(203),
    [anon_sym_above] = ACTIONS(203),
    [anon_sym_added] = ACTIONS(203),
    [anon_sym_after] = ACTIONS(203),
    [anon_sym_against] = ACTIONS(203),
    [anon_sym_agl] = ACTIONS(203),
    [anon_sym_allocated] = ACTIONS(203),
    [anon_sym_am] = ACTIONS(203),
    [anon_sym_ambient] = ACTIONS(203),
    [anon_sym_amsl] = ACTIONS(203),
    [anon_sym_apart] = ACTIONS(203),
    [anon_sym_at] = ACTIONS(203),
    [anon_sym_averaging] = ACTIONS(203),
    [anon_sym_below] = ACTIONS(203),
    [anon_sym_beyond] = ACTIONS(203),
    [anon_sym_blank] = ACTIONS(203),
    [anon_sym_bow] = ACTIONS(203),
    [anon_sym_bullington] = ACTIONS(203),
    [anon_sym_by] = ACTIONS(203),
    [anon_sym_carrier] = ACTIONS(203),
    [anon_sym_cascade] = ACTIONS(203),
    [anon_sym_city] = ACTIONS(203),
    [anon_sym_clad] = ACTIONS(203),
    [anon_sym_confidence] = ACTIONS(203),
    [anon_sym_corrected] = ACTIONS(203),
    [anon_sym_cw] = ACTIONS(203),
    [anon_sym_dB] = ACTIONS(203),
    [anon_sym_dBW] = ACTIONS(203),
    [anon_sym_dBd] = ACTIONS(203),
    [anon_sym_dBi] = ACTIONS(203),
    [anon_sym_dBm] = ACTIONS(203),
    [anon_sym_data] = ACTIONS(203),
    [anon_sym_date] = ACTIONS(203),
    [anon_sym_datum] = ACTIONS(203),
    [anon_sym_dc_DASHinput] = ACTIONS(203),
    [anon_sym_degrees] = ACTIONS(203),
    [anon_sym_delivered] = ACTIONS(203),
    [anon_sym_desense] = ACTIONS(203),
    [anon_sym_displayed] = ACTIONS(203),
    [anon_sym_dms] = ACTIONS(203),
    [anon_sym_down] = ACTIONS(203),
    [anon_sym_eirp] = ACTIONS(203),
    [anon_sym_elevation] = ACTIONS(203),
    [anon_sym_ends] = ACTIONS(203),
    [anon_sym_erp] = ACTIONS(203),
    [anon_sym_etrs89] = ACTIONS(203),
    [anon_sym_figure] = ACTIONS(203),
    [anon_sym_fm] = ACTIONS(203),
    [anon_sym_for] = ACTIONS(203),
    [anon_sym_forward] = ACTIONS(203),
    [anon_sym_free_DASHspace] = ACTIONS(203),
    [anon_sym_frequency] = ACTIONS(203),
    [anon_sym_ft] = ACTIONS(203),
    [anon_sym_full] = ACTIONS(203),
    [anon_sym_guess] = ACTIONS(203),
    [anon_sym_hata_DASHopen] = ACTIONS(203),
    [anon_sym_hata_DASHsuburban] = ACTIONS(203),
    [anon_sym_hata_DASHurban] = ACTIONS(203),
    [anon_sym_height_DASHamsl] = ACTIONS(203),
    [anon_sym_horizontal] = ACTIONS(203),
    [anon_sym_if] = ACTIONS(203),
    [anon_sym_in] = ACTIONS(203),
    [anon_sym_input] = ACTIONS(203),
    [anon_sym_instead] = ACTIONS(203),
    [anon_sym_k] = ACTIONS(203),
    [anon_sym_kHz] = ACTIONS(203),
    [anon_sym_kW] = ACTIONS(203),
    [anon_sym_km] = ACTIONS(203),
    [anon_sym_latitude] = ACTIONS(203),
    [anon_sym_longitude] = ACTIONS(203),
    [anon_sym_m] = ACTIONS(203),
    [anon_sym_mW] = ACTIONS(203),
    [anon_sym_maximum] = ACTIONS(203),
    [anon_sym_mean] = ACTIONS(203),
    [anon_sym_medium] = ACTIONS(203),
    [anon_sym_nad27] = ACTIONS(203),
    [anon_sym_nad83] = ACTIONS(203),
    [anon_sym_net] = ACTIONS(203),
    [anon_sym_no] = ACTIONS(203),
    [anon_sym_nominal] = ACTIONS(203),
    [anon_sym_occupational] = ACTIONS(203),
    [anon_sym_of] = ACTIONS(203),
    [anon_sym_offset] = ACTIONS(203),
    [anon_sym_on] = ACTIONS(203),
    [anon_sym_one_DASHedge] = ACTIONS(203),
    [anon_sym_out] = ACTIONS(203),
    [anon_sym_output] = ACTIONS(203),
    [anon_sym_over] = ACTIONS(203),
    [anon_sym_pep] = ACTIONS(203),
    [anon_sym_per] = ACTIONS(203),
    [anon_sym_places] = ACTIONS(203),
    [anon_sym_public] = ACTIONS(203),
    [anon_sym_quiet_DASHrural] = ACTIONS(203),
    [anon_sym_quieting] = ACTIONS(203),
    [anon_sym_rated] = ACTIONS(203),
    [anon_sym_reactance] = ACTIONS(203),
    [anon_sym_reading] = ACTIONS(203),
    [anon_sym_realized] = ACTIONS(203),
    [anon_sym_receive_DASHfrequency] = ACTIONS(203),
    [anon_sym_receive_DASHloss] = ACTIONS(203),
    [anon_sym_reference] = ACTIONS(203),
    [anon_sym_reflected] = ACTIONS(203),
    [anon_sym_rejects] = ACTIONS(203),
    [anon_sym_residential] = ACTIONS(203),
    [anon_sym_rural] = ACTIONS(203),
    [anon_sym_series] = ACTIONS(203),
    [anon_sym_shared] = ACTIONS(203),
    [anon_sym_sheet] = ACTIONS(203),
    [anon_sym_shunt] = ACTIONS(203),
    [anon_sym_sinad] = ACTIONS(203),
    [anon_sym_since] = ACTIONS(203),
    [anon_sym_snr] = ACTIONS(203),
    [anon_sym_spread] = ACTIONS(203),
    [anon_sym_ssb] = ACTIONS(203),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(203),
    [anon_sym_then] = ACTIONS(203),
    [anon_sym_title] = ACTIONS(203),
    [anon_sym_to] = ACTIONS(203),
    [anon_sym_total] = ACTIONS(203),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(203),
    [anon_sym_two_DASHray] = ACTIONS(203),
    [anon_sym_typical] = ACTIONS(203),
    [anon_sym_up] = ACTIONS(203),
    [anon_sym_vertical] = ACTIONS(203),
    [anon_sym_way] = ACTIONS(203),
    [anon_sym_wet] = ACTIONS(203),
    [anon_sym_wgs84] = ACTIONS(203),
    [anon_sym_with] = ACTIONS(203),
    [anon_sym_within] = ACTIONS(203),
    [anon_sym_yes] = ACTIONS(203),
    [anon_sym_LPAREN] = ACTIONS(201),
    [anon_sym_DASH] = ACTIONS(203),
    [anon_sym_u2212] = ACTIONS(203),
    [anon_sym_u2013] = ACTIONS(203),
    [sym__glued] = ACTIONS(203),
    [sym_number] = ACTIONS(203),
    [sym_digit_name] = ACTIONS(203),
    [sym_comment] = ACTIONS(3),
  },
  [39] = {
    [ts_builtin_sym_end] = ACTIONS(205),
    [sym_name] = ACTIONS(207),
    [aux_sym__end_token1] = ACTIONS(205),
    [anon_sym_SEMI] = ACTIONS(205),
    [anon_sym_RBRACE] = ACTIONS(205),
    [anon_sym_use] = ACTIONS(207),
    [anon_sym_band] = ACTIONS(207),
    [anon_sym_let] = ACTIONS(207),
    [anon_sym_cable] = ACTIONS(207),
    [anon_sym_connector] = ACTIONS(207),
    [anon_sym_device] = ACTIONS(207),
    [anon_sym_instrument] = ACTIONS(207),
    [anon_sym_session] = ACTIONS(207),
    [anon_sym_station] = ACTIONS(207),
    [anon_sym_chain] = ACTIONS(207),
    [anon_sym_licence] = ACTIONS(207),
    [anon_sym_rules] = ACTIONS(207),
    [anon_sym_link] = ACTIONS(207),
    [anon_sym_variant] = ACTIONS(207),
    [anon_sym_accept] = ACTIONS(207),
    [anon_sym_transmit] = ACTIONS(207),
    [anon_sym_receive] = ACTIONS(207),
    [anon_sym_impedance] = ACTIONS(207),
    [anon_sym_velocity] = ACTIONS(207),
    [anon_sym_loss] = ACTIONS(207),
    [anon_sym_construction] = ACTIONS(207),
    [anon_sym_wires] = ACTIONS(207),
    [anon_sym_valid] = ACTIONS(207),
    [anon_sym_accuracy] = ACTIONS(207),
    [anon_sym_rating] = ACTIONS(207),
    [anon_sym_voltage] = ACTIONS(207),
    [anon_sym_size] = ACTIONS(207),
    [anon_sym_conductor] = ACTIONS(207),
    [anon_sym_source] = ACTIONS(207),
    [anon_sym_recalled] = ACTIONS(207),
    [anon_sym_joins] = ACTIONS(207),
    [anon_sym_limit] = ACTIONS(207),
    [anon_sym_family] = ACTIONS(207),
    [anon_sym_bump] = ACTIONS(207),
    [anon_sym_return_DASHloss] = ACTIONS(207),
    [anon_sym_swr] = ACTIONS(207),
    [anon_sym_kind] = ACTIONS(207),
    [anon_sym_high] = ACTIONS(207),
    [anon_sym_low] = ACTIONS(207),
    [anon_sym_port] = ACTIONS(207),
    [anon_sym_from] = ACTIONS(207),
    [anon_sym_isolation] = ACTIONS(207),
    [anon_sym_ratio] = ACTIONS(207),
    [anon_sym_split] = ACTIONS(207),
    [anon_sym_tee] = ACTIONS(207),
    [anon_sym_reversed] = ACTIONS(207),
    [anon_sym_passes] = ACTIONS(207),
    [anon_sym_gain] = ACTIONS(207),
    [anon_sym_noise] = ACTIONS(207),
    [anon_sym_excess] = ACTIONS(207),
    [anon_sym_ways] = ACTIONS(207),
    [anon_sym_coupled] = ACTIONS(207),
    [anon_sym_calibrated] = ACTIONS(207),
    [anon_sym_scale] = ACTIONS(207),
    [anon_sym_resolution] = ACTIONS(207),
    [anon_sym_due] = ACTIONS(207),
    [anon_sym_linearity] = ACTIONS(207),
    [anon_sym_repeatability] = ACTIONS(207),
    [anon_sym_directivity] = ACTIONS(207),
    [anon_sym_certificate] = ACTIONS(207),
    [anon_sym_load] = ACTIONS(207),
    [anon_sym_read] = ACTIONS(207),
    [anon_sym_temperature] = ACTIONS(207),
    [anon_sym_generator] = ACTIONS(207),
    [anon_sym_drift] = ACTIONS(207),
    [anon_sym_piece] = ACTIONS(207),
    [anon_sym_readings] = ACTIONS(207),
    [anon_sym_resonance] = ACTIONS(207),
    [anon_sym_delay] = ACTIONS(207),
    [anon_sym_phase] = ACTIONS(207),
    [anon_sym_adapter] = ACTIONS(207),
    [anon_sym_position] = ACTIONS(207),
    [anon_sym_ground] = ACTIONS(207),
    [anon_sym_place] = ACTIONS(207),
    [anon_sym_under] = ACTIONS(207),
    [anon_sym_beside] = ACTIONS(207),
    [anon_sym_spot] = ACTIONS(207),
    [anon_sym_alone] = ACTIONS(207),
    [anon_sym_site_DASHnoise] = ACTIONS(207),
    [anon_sym_transmitter] = ACTIONS(207),
    [anon_sym_receiver] = ACTIONS(207),
    [anon_sym_transceiver] = ACTIONS(207),
    [anon_sym_run] = ACTIONS(207),
    [anon_sym_jumper] = ACTIONS(207),
    [anon_sym_tail] = ACTIONS(207),
    [anon_sym_pad] = ACTIONS(207),
    [anon_sym_filter] = ACTIONS(207),
    [anon_sym_isolator] = ACTIONS(207),
    [anon_sym_circulator] = ACTIONS(207),
    [anon_sym_protector] = ACTIONS(207),
    [anon_sym_switch] = ACTIONS(207),
    [anon_sym_coupler] = ACTIONS(207),
    [anon_sym_meter] = ACTIONS(207),
    [anon_sym_balun] = ACTIONS(207),
    [anon_sym_tuner] = ACTIONS(207),
    [anon_sym_duplexer] = ACTIONS(207),
    [anon_sym_diplexer] = ACTIONS(207),
    [anon_sym_combiner] = ACTIONS(207),
    [anon_sym_divider] = ACTIONS(207),
    [anon_sym_amplifier] = ACTIONS(207),
    [anon_sym_preamplifier] = ACTIONS(207),
    [anon_sym_antenna] = ACTIONS(207),
    [anon_sym_branches] = ACTIONS(207),
    [anon_sym_expect] = ACTIONS(207),
    [anon_sym_authority] = ACTIONS(207),
    [anon_sym_jurisdiction] = ACTIONS(207),
    [anon_sym_service] = ACTIONS(207),
    [anon_sym_edition] = ACTIONS(207),
    [anon_sym_dated] = ACTIONS(207),
    [anon_sym_until] = ACTIONS(207),
    [anon_sym_holder] = ACTIONS(207),
    [anon_sym_class] = ACTIONS(207),
    [anon_sym_ask] = ACTIONS(207),
    [anon_sym_threshold] = ACTIONS(207),
    [anon_sym_fixed] = ACTIONS(207),
    [anon_sym_condition] = ACTIONS(207),
    [anon_sym_reflection] = ACTIONS(207),
    [anon_sym_field] = ACTIONS(207),
    [anon_sym_hop] = ACTIONS(207),
    [anon_sym_profile] = ACTIONS(207),
    [anon_sym_distance] = ACTIONS(207),
    [anon_sym_k_DASHfactor] = ACTIONS(207),
    [anon_sym_need] = ACTIONS(207),
    [anon_sym_model] = ACTIONS(207),
    [anon_sym_coverage] = ACTIONS(207),
    [anon_sym_take] = ACTIONS(207),
    [anon_sym_put] = ACTIONS(207),
    [anon_sym_branch] = ACTIONS(207),
    [anon_sym_inner] = ACTIONS(207),
    [anon_sym_outer] = ACTIONS(207),
    [anon_sym_permittivity] = ACTIONS(207),
    [anon_sym_loss_DASHtangent] = ACTIONS(207),
    [anon_sym_strand] = ACTIONS(207),
    [anon_sym_strand_DASHdiameter] = ACTIONS(207),
    [anon_sym_braid] = ACTIONS(207),
    [anon_sym_resistivity] = ACTIONS(207),
    [anon_sym_inner_DASHresistivity] = ACTIONS(207),
    [anon_sym_outer_DASHresistivity] = ACTIONS(207),
    [anon_sym_diameter] = ACTIONS(207),
    [anon_sym_spacing] = ACTIONS(207),
    [anon_sym_baseline] = ACTIONS(207),
    [anon_sym_through] = ACTIONS(207),
    [anon_sym_open] = ACTIONS(207),
    [anon_sym_short] = ACTIONS(207),
    [anon_sym_equalise] = ACTIONS(207),
    [anon_sym_power] = ACTIONS(207),
    [anon_sym_mode] = ACTIONS(207),
    [anon_sym_duty] = ACTIONS(207),
    [anon_sym_keyed] = ACTIONS(207),
    [anon_sym_foldback] = ACTIONS(207),
    [anon_sym_bandwidth] = ACTIONS(207),
    [anon_sym_sensitivity] = ACTIONS(207),
    [anon_sym_blocking] = ACTIONS(207),
    [anon_sym_efficiency] = ACTIONS(207),
    [anon_sym_height] = ACTIONS(207),
    [anon_sym_pattern] = ACTIONS(207),
    [anon_sym_haat] = ACTIONS(207),
    [anon_sym_radius] = ACTIONS(207),
    [anon_sym_fails] = ACTIONS(207),
    [anon_sym_GHz] = ACTIONS(207),
    [anon_sym_Hz] = ACTIONS(207),
    [anon_sym_MHz] = ACTIONS(207),
    [anon_sym_above] = ACTIONS(207),
    [anon_sym_added] = ACTIONS(207),
    [anon_sym_after] = ACTIONS(207),
    [anon_sym_against] = ACTIONS(207),
    [anon_sym_agl] = ACTIONS(207),
    [anon_sym_allocated] = ACTIONS(207),
    [anon_sym_am] = ACTIONS(207),
    [anon_sym_ambient] = ACTIONS(207),
    [anon_sym_amsl] = ACTIONS(207),
    [anon_sym_apart] = ACTIONS(207),
    [anon_sym_at] = ACTIONS(207),
    [anon_sym_averaging] = ACTIONS(207),
    [anon_sym_below] = ACTIONS(207),
    [anon_sym_beyond] = ACTIONS(207),
    [anon_sym_blank] = ACTIONS(207),
    [anon_sym_bow] = ACTIONS(207),
    [anon_sym_bullington] = ACTIONS(207),
    [anon_sym_by] = ACTIONS(207),
    [anon_sym_carrier] = ACTIONS(207),
    [anon_sym_cascade] = ACTIONS(207),
    [anon_sym_city] = ACTIONS(207),
    [anon_sym_clad] = ACTIONS(207),
    [anon_sym_confidence] = ACTIONS(207),
    [anon_sym_corrected] = ACTIONS(207),
    [anon_sym_cw] = ACTIONS(207),
    [anon_sym_dB] = ACTIONS(207),
    [anon_sym_dBW] = ACTIONS(207),
    [anon_sym_dBd] = ACTIONS(207),
    [anon_sym_dBi] = ACTIONS(207),
    [anon_sym_dBm] = ACTIONS(207),
    [anon_sym_data] = ACTIONS(207),
    [anon_sym_date] = ACTIONS(207),
    [anon_sym_datum] = ACTIONS(207),
    [anon_sym_dc_DASHinput] = ACTIONS(207),
    [anon_sym_degrees] = ACTIONS(207),
    [anon_sym_delivered] = ACTIONS(207),
    [anon_sym_desense] = ACTIONS(207),
    [anon_sym_displayed] = ACTIONS(207),
    [anon_sym_dms] = ACTIONS(207),
    [anon_sym_down] = ACTIONS(207),
    [anon_sym_eirp] = ACTIONS(207),
    [anon_sym_elevation] = ACTIONS(207),
    [anon_sym_ends] = ACTIONS(207),
    [anon_sym_erp] = ACTIONS(207),
    [anon_sym_etrs89] = ACTIONS(207),
    [anon_sym_figure] = ACTIONS(207),
    [anon_sym_fm] = ACTIONS(207),
    [anon_sym_for] = ACTIONS(207),
    [anon_sym_forward] = ACTIONS(207),
    [anon_sym_free_DASHspace] = ACTIONS(207),
    [anon_sym_frequency] = ACTIONS(207),
    [anon_sym_ft] = ACTIONS(207),
    [anon_sym_full] = ACTIONS(207),
    [anon_sym_guess] = ACTIONS(207),
    [anon_sym_hata_DASHopen] = ACTIONS(207),
    [anon_sym_hata_DASHsuburban] = ACTIONS(207),
    [anon_sym_hata_DASHurban] = ACTIONS(207),
    [anon_sym_height_DASHamsl] = ACTIONS(207),
    [anon_sym_horizontal] = ACTIONS(207),
    [anon_sym_if] = ACTIONS(207),
    [anon_sym_in] = ACTIONS(207),
    [anon_sym_input] = ACTIONS(207),
    [anon_sym_instead] = ACTIONS(207),
    [anon_sym_k] = ACTIONS(207),
    [anon_sym_kHz] = ACTIONS(207),
    [anon_sym_kW] = ACTIONS(207),
    [anon_sym_km] = ACTIONS(207),
    [anon_sym_latitude] = ACTIONS(207),
    [anon_sym_longitude] = ACTIONS(207),
    [anon_sym_m] = ACTIONS(207),
    [anon_sym_mW] = ACTIONS(207),
    [anon_sym_maximum] = ACTIONS(207),
    [anon_sym_mean] = ACTIONS(207),
    [anon_sym_medium] = ACTIONS(207),
    [anon_sym_nad27] = ACTIONS(207),
    [anon_sym_nad83] = ACTIONS(207),
    [anon_sym_net] = ACTIONS(207),
    [anon_sym_no] = ACTIONS(207),
    [anon_sym_nominal] = ACTIONS(207),
    [anon_sym_occupational] = ACTIONS(207),
    [anon_sym_of] = ACTIONS(207),
    [anon_sym_offset] = ACTIONS(207),
    [anon_sym_on] = ACTIONS(207),
    [anon_sym_one_DASHedge] = ACTIONS(207),
    [anon_sym_out] = ACTIONS(207),
    [anon_sym_output] = ACTIONS(207),
    [anon_sym_over] = ACTIONS(207),
    [anon_sym_pep] = ACTIONS(207),
    [anon_sym_per] = ACTIONS(207),
    [anon_sym_places] = ACTIONS(207),
    [anon_sym_public] = ACTIONS(207),
    [anon_sym_quiet_DASHrural] = ACTIONS(207),
    [anon_sym_quieting] = ACTIONS(207),
    [anon_sym_rated] = ACTIONS(207),
    [anon_sym_reactance] = ACTIONS(207),
    [anon_sym_reading] = ACTIONS(207),
    [anon_sym_realized] = ACTIONS(207),
    [anon_sym_receive_DASHfrequency] = ACTIONS(207),
    [anon_sym_receive_DASHloss] = ACTIONS(207),
    [anon_sym_reference] = ACTIONS(207),
    [anon_sym_reflected] = ACTIONS(207),
    [anon_sym_rejects] = ACTIONS(207),
    [anon_sym_residential] = ACTIONS(207),
    [anon_sym_rural] = ACTIONS(207),
    [anon_sym_series] = ACTIONS(207),
    [anon_sym_shared] = ACTIONS(207),
    [anon_sym_sheet] = ACTIONS(207),
    [anon_sym_shunt] = ACTIONS(207),
    [anon_sym_sinad] = ACTIONS(207),
    [anon_sym_since] = ACTIONS(207),
    [anon_sym_snr] = ACTIONS(207),
    [anon_sym_spread] = ACTIONS(207),
    [anon_sym_ssb] = ACTIONS(207),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(207),
    [anon_sym_then] = ACTIONS(207),
    [anon_sym_title] = ACTIONS(207),
    [anon_sym_to] = ACTIONS(207),
    [anon_sym_total] = ACTIONS(207),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(207),
    [anon_sym_two_DASHray] = ACTIONS(207),
    [anon_sym_typical] = ACTIONS(207),
    [anon_sym_up] = ACTIONS(207),
    [anon_sym_vertical] = ACTIONS(207),
    [anon_sym_way] = ACTIONS(207),
    [anon_sym_wet] = ACTIONS(207),
    [anon_sym_wgs84] = ACTIONS(207),
    [anon_sym_with] = ACTIONS(207),
    [anon_sym_within] = ACTIONS(207),
    [anon_sym_yes] = ACTIONS(207),
    [anon_sym_LPAREN] = ACTIONS(205),
    [anon_sym_DASH] = ACTIONS(207),
    [anon_sym_u2212] = ACTIONS(207),
    [anon_sym_u2013] = ACTIONS(207),
    [sym__glued] = ACTIONS(207),
    [sym_number] = ACTIONS(207),
    [sym_digit_name] = ACTIONS(207),
    [sym_comment] = ACTIONS(3),
  },
  [40] = {
    [ts_builtin_sym_end] = ACTIONS(209),
    [sym_name] = ACTIONS(211),
    [aux_sym__end_token1] = ACTIONS(209),
    [anon_sym_SEMI] = ACTIONS(209),
    [anon_sym_RBRACE] = ACTIONS(209),
    [anon_sym_use] = ACTIONS(211),
    [anon_sym_band] = ACTIONS(211),
    [anon_sym_let] = ACTIONS(211),
    [anon_sym_cable] = ACTIONS(211),
    [anon_sym_connector] = ACTIONS(211),
    [anon_sym_device] = ACTIONS(211),
    [anon_sym_instrument] = ACTIONS(211),
    [anon_sym_session] = ACTIONS(211),
    [anon_sym_station] = ACTIONS(211),
    [anon_sym_chain] = ACTIONS(211),
    [anon_sym_licence] = ACTIONS(211),
    [anon_sym_rules] = ACTIONS(211),
    [anon_sym_link] = ACTIONS(211),
    [anon_sym_variant] = ACTIONS(211),
    [anon_sym_accept] = ACTIONS(211),
    [anon_sym_transmit] = ACTIONS(211),
    [anon_sym_receive] = ACTIONS(211),
    [anon_sym_impedance] = ACTIONS(211),
    [anon_sym_velocity] = ACTIONS(211),
    [anon_sym_loss] = ACTIONS(211),
    [anon_sym_construction] = ACTIONS(211),
    [anon_sym_wires] = ACTIONS(211),
    [anon_sym_valid] = ACTIONS(211),
    [anon_sym_accuracy] = ACTIONS(211),
    [anon_sym_rating] = ACTIONS(211),
    [anon_sym_voltage] = ACTIONS(211),
    [anon_sym_size] = ACTIONS(211),
    [anon_sym_conductor] = ACTIONS(211),
    [anon_sym_source] = ACTIONS(211),
    [anon_sym_recalled] = ACTIONS(211),
    [anon_sym_joins] = ACTIONS(211),
    [anon_sym_limit] = ACTIONS(211),
    [anon_sym_family] = ACTIONS(211),
    [anon_sym_bump] = ACTIONS(211),
    [anon_sym_return_DASHloss] = ACTIONS(211),
    [anon_sym_swr] = ACTIONS(211),
    [anon_sym_kind] = ACTIONS(211),
    [anon_sym_high] = ACTIONS(211),
    [anon_sym_low] = ACTIONS(211),
    [anon_sym_port] = ACTIONS(211),
    [anon_sym_from] = ACTIONS(211),
    [anon_sym_isolation] = ACTIONS(211),
    [anon_sym_ratio] = ACTIONS(211),
    [anon_sym_split] = ACTIONS(211),
    [anon_sym_tee] = ACTIONS(211),
    [anon_sym_reversed] = ACTIONS(211),
    [anon_sym_passes] = ACTIONS(211),
    [anon_sym_gain] = ACTIONS(211),
    [anon_sym_noise] = ACTIONS(211),
    [anon_sym_excess] = ACTIONS(211),
    [anon_sym_ways] = ACTIONS(211),
    [anon_sym_coupled] = ACTIONS(211),
    [anon_sym_calibrated] = ACTIONS(211),
    [anon_sym_scale] = ACTIONS(211),
    [anon_sym_resolution] = ACTIONS(211),
    [anon_sym_due] = ACTIONS(211),
    [anon_sym_linearity] = ACTIONS(211),
    [anon_sym_repeatability] = ACTIONS(211),
    [anon_sym_directivity] = ACTIONS(211),
    [anon_sym_certificate] = ACTIONS(211),
    [anon_sym_load] = ACTIONS(211),
    [anon_sym_read] = ACTIONS(211),
    [anon_sym_temperature] = ACTIONS(211),
    [anon_sym_generator] = ACTIONS(211),
    [anon_sym_drift] = ACTIONS(211),
    [anon_sym_piece] = ACTIONS(211),
    [anon_sym_readings] = ACTIONS(211),
    [anon_sym_resonance] = ACTIONS(211),
    [anon_sym_delay] = ACTIONS(211),
    [anon_sym_phase] = ACTIONS(211),
    [anon_sym_adapter] = ACTIONS(211),
    [anon_sym_position] = ACTIONS(211),
    [anon_sym_ground] = ACTIONS(211),
    [anon_sym_place] = ACTIONS(211),
    [anon_sym_under] = ACTIONS(211),
    [anon_sym_beside] = ACTIONS(211),
    [anon_sym_spot] = ACTIONS(211),
    [anon_sym_alone] = ACTIONS(211),
    [anon_sym_site_DASHnoise] = ACTIONS(211),
    [anon_sym_transmitter] = ACTIONS(211),
    [anon_sym_receiver] = ACTIONS(211),
    [anon_sym_transceiver] = ACTIONS(211),
    [anon_sym_run] = ACTIONS(211),
    [anon_sym_jumper] = ACTIONS(211),
    [anon_sym_tail] = ACTIONS(211),
    [anon_sym_pad] = ACTIONS(211),
    [anon_sym_filter] = ACTIONS(211),
    [anon_sym_isolator] = ACTIONS(211),
    [anon_sym_circulator] = ACTIONS(211),
    [anon_sym_protector] = ACTIONS(211),
    [anon_sym_switch] = ACTIONS(211),
    [anon_sym_coupler] = ACTIONS(211),
    [anon_sym_meter] = ACTIONS(211),
    [anon_sym_balun] = ACTIONS(211),
    [anon_sym_tuner] = ACTIONS(211),
    [anon_sym_duplexer] = ACTIONS(211),
    [anon_sym_diplexer] = ACTIONS(211),
    [anon_sym_combiner] = ACTIONS(211),
    [anon_sym_divider] = ACTIONS(211),
    [anon_sym_amplifier] = ACTIONS(211),
    [anon_sym_preamplifier] = ACTIONS(211),
    [anon_sym_antenna] = ACTIONS(211),
    [anon_sym_branches] = ACTIONS(211),
    [anon_sym_expect] = ACTIONS(211),
    [anon_sym_authority] = ACTIONS(211),
    [anon_sym_jurisdiction] = ACTIONS(211),
    [anon_sym_service] = ACTIONS(211),
    [anon_sym_edition] = ACTIONS(211),
    [anon_sym_dated] = ACTIONS(211),
    [anon_sym_until] = ACTIONS(211),
    [anon_sym_holder] = ACTIONS(211),
    [anon_sym_class] = ACTIONS(211),
    [anon_sym_ask] = ACTIONS(211),
    [anon_sym_threshold] = ACTIONS(211),
    [anon_sym_fixed] = ACTIONS(211),
    [anon_sym_condition] = ACTIONS(211),
    [anon_sym_reflection] = ACTIONS(211),
    [anon_sym_field] = ACTIONS(211),
    [anon_sym_hop] = ACTIONS(211),
    [anon_sym_profile] = ACTIONS(211),
    [anon_sym_distance] = ACTIONS(211),
    [anon_sym_k_DASHfactor] = ACTIONS(211),
    [anon_sym_need] = ACTIONS(211),
    [anon_sym_model] = ACTIONS(211),
    [anon_sym_coverage] = ACTIONS(211),
    [anon_sym_take] = ACTIONS(211),
    [anon_sym_put] = ACTIONS(211),
    [anon_sym_branch] = ACTIONS(211),
    [anon_sym_inner] = ACTIONS(211),
    [anon_sym_outer] = ACTIONS(211),
    [anon_sym_permittivity] = ACTIONS(211),
    [anon_sym_loss_DASHtangent] = ACTIONS(211),
    [anon_sym_strand] = ACTIONS(211),
    [anon_sym_strand_DASHdiameter] = ACTIONS(211),
    [anon_sym_braid] = ACTIONS(211),
    [anon_sym_resistivity] = ACTIONS(211),
    [anon_sym_inner_DASHresistivity] = ACTIONS(211),
    [anon_sym_outer_DASHresistivity] = ACTIONS(211),
    [anon_sym_diameter] = ACTIONS(211),
    [anon_sym_spacing] = ACTIONS(211),
    [anon_sym_baseline] = ACTIONS(211),
    [anon_sym_through] = ACTIONS(211),
    [anon_sym_open] = ACTIONS(211),
    [anon_sym_short] = ACTIONS(211),
    [anon_sym_equalise] = ACTIONS(211),
    [anon_sym_power] = ACTIONS(211),
    [anon_sym_mode] = ACTIONS(211),
    [anon_sym_duty] = ACTIONS(211),
    [anon_sym_keyed] = ACTIONS(211),
    [anon_sym_foldback] = ACTIONS(211),
    [anon_sym_bandwidth] = ACTIONS(211),
    [anon_sym_sensitivity] = ACTIONS(211),
    [anon_sym_blocking] = ACTIONS(211),
    [anon_sym_efficiency] = ACTIONS(211),
    [anon_sym_height] = ACTIONS(211),
    [anon_sym_pattern] = ACTIONS(211),
    [anon_sym_haat] = ACTIONS(211),
    [anon_sym_radius] = ACTIONS(211),
    [anon_sym_fails] = ACTIONS(211),
    [anon_sym_GHz] = ACTIONS(211),
    [anon_sym_Hz] = ACTIONS(211),
    [anon_sym_MHz] = ACTIONS(211),
    [anon_sym_above] = ACTIONS(211),
    [anon_sym_added] = ACTIONS(211),
    [anon_sym_after] = ACTIONS(211),
    [anon_sym_against] = ACTIONS(211),
    [anon_sym_agl] = ACTIONS(211),
    [anon_sym_allocated] = ACTIONS(211),
    [anon_sym_am] = ACTIONS(211),
    [anon_sym_ambient] = ACTIONS(211),
    [anon_sym_amsl] = ACTIONS(211),
    [anon_sym_apart] = ACTIONS(211),
    [anon_sym_at] = ACTIONS(211),
    [anon_sym_averaging] = ACTIONS(211),
    [anon_sym_below] = ACTIONS(211),
    [anon_sym_beyond] = ACTIONS(211),
    [anon_sym_blank] = ACTIONS(211),
    [anon_sym_bow] = ACTIONS(211),
    [anon_sym_bullington] = ACTIONS(211),
    [anon_sym_by] = ACTIONS(211),
    [anon_sym_carrier] = ACTIONS(211),
    [anon_sym_cascade] = ACTIONS(211),
    [anon_sym_city] = ACTIONS(211),
    [anon_sym_clad] = ACTIONS(211),
    [anon_sym_confidence] = ACTIONS(211),
    [anon_sym_corrected] = ACTIONS(211),
    [anon_sym_cw] = ACTIONS(211),
    [anon_sym_dB] = ACTIONS(211),
    [anon_sym_dBW] = ACTIONS(211),
    [anon_sym_dBd] = ACTIONS(211),
    [anon_sym_dBi] = ACTIONS(211),
    [anon_sym_dBm] = ACTIONS(211),
    [anon_sym_data] = ACTIONS(211),
    [anon_sym_date] = ACTIONS(211),
    [anon_sym_datum] = ACTIONS(211),
    [anon_sym_dc_DASHinput] = ACTIONS(211),
    [anon_sym_degrees] = ACTIONS(211),
    [anon_sym_delivered] = ACTIONS(211),
    [anon_sym_desense] = ACTIONS(211),
    [anon_sym_displayed] = ACTIONS(211),
    [anon_sym_dms] = ACTIONS(211),
    [anon_sym_down] = ACTIONS(211),
    [anon_sym_eirp] = ACTIONS(211),
    [anon_sym_elevation] = ACTIONS(211),
    [anon_sym_ends] = ACTIONS(211),
    [anon_sym_erp] = ACTIONS(211),
    [anon_sym_etrs89] = ACTIONS(211),
    [anon_sym_figure] = ACTIONS(211),
    [anon_sym_fm] = ACTIONS(211),
    [anon_sym_for] = ACTIONS(211),
    [anon_sym_forward] = ACTIONS(211),
    [anon_sym_free_DASHspace] = ACTIONS(211),
    [anon_sym_frequency] = ACTIONS(211),
    [anon_sym_ft] = ACTIONS(211),
    [anon_sym_full] = ACTIONS(211),
    [anon_sym_guess] = ACTIONS(211),
    [anon_sym_hata_DASHopen] = ACTIONS(211),
    [anon_sym_hata_DASHsuburban] = ACTIONS(211),
    [anon_sym_hata_DASHurban] = ACTIONS(211),
    [anon_sym_height_DASHamsl] = ACTIONS(211),
    [anon_sym_horizontal] = ACTIONS(211),
    [anon_sym_if] = ACTIONS(211),
    [anon_sym_in] = ACTIONS(211),
    [anon_sym_input] = ACTIONS(211),
    [anon_sym_instead] = ACTIONS(211),
    [anon_sym_k] = ACTIONS(211),
    [anon_sym_kHz] = ACTIONS(211),
    [anon_sym_kW] = ACTIONS(211),
    [anon_sym_km] = ACTIONS(211),
    [anon_sym_latitude] = ACTIONS(211),
    [anon_sym_longitude] = ACTIONS(211),
    [anon_sym_m] = ACTIONS(211),
    [anon_sym_mW] = ACTIONS(211),
    [anon_sym_maximum] = ACTIONS(211),
    [anon_sym_mean] = ACTIONS(211),
    [anon_sym_medium] = ACTIONS(211),
    [anon_sym_nad27] = ACTIONS(211),
    [anon_sym_nad83] = ACTIONS(211),
    [anon_sym_net] = ACTIONS(211),
    [anon_sym_no] = ACTIONS(211),
    [anon_sym_nominal] = ACTIONS(211),
    [anon_sym_occupational] = ACTIONS(211),
    [anon_sym_of] = ACTIONS(211),
    [anon_sym_offset] = ACTIONS(211),
    [anon_sym_on] = ACTIONS(211),
    [anon_sym_one_DASHedge] = ACTIONS(211),
    [anon_sym_out] = ACTIONS(211),
    [anon_sym_output] = ACTIONS(211),
    [anon_sym_over] = ACTIONS(211),
    [anon_sym_pep] = ACTIONS(211),
    [anon_sym_per] = ACTIONS(211),
    [anon_sym_places] = ACTIONS(211),
    [anon_sym_public] = ACTIONS(211),
    [anon_sym_quiet_DASHrural] = ACTIONS(211),
    [anon_sym_quieting] = ACTIONS(211),
    [anon_sym_rated] = ACTIONS(211),
    [anon_sym_reactance] = ACTIONS(211),
    [anon_sym_reading] = ACTIONS(211),
    [anon_sym_realized] = ACTIONS(211),
    [anon_sym_receive_DASHfrequency] = ACTIONS(211),
    [anon_sym_receive_DASHloss] = ACTIONS(211),
    [anon_sym_reference] = ACTIONS(211),
    [anon_sym_reflected] = ACTIONS(211),
    [anon_sym_rejects] = ACTIONS(211),
    [anon_sym_residential] = ACTIONS(211),
    [anon_sym_rural] = ACTIONS(211),
    [anon_sym_series] = ACTIONS(211),
    [anon_sym_shared] = ACTIONS(211),
    [anon_sym_sheet] = ACTIONS(211),
    [anon_sym_shunt] = ACTIONS(211),
    [anon_sym_sinad] = ACTIONS(211),
    [anon_sym_since] = ACTIONS(211),
    [anon_sym_snr] = ACTIONS(211),
    [anon_sym_spread] = ACTIONS(211),
    [anon_sym_ssb] = ACTIONS(211),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(211),
    [anon_sym_then] = ACTIONS(211),
    [anon_sym_title] = ACTIONS(211),
    [anon_sym_to] = ACTIONS(211),
    [anon_sym_total] = ACTIONS(211),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(211),
    [anon_sym_two_DASHray] = ACTIONS(211),
    [anon_sym_typical] = ACTIONS(211),
    [anon_sym_up] = ACTIONS(211),
    [anon_sym_vertical] = ACTIONS(211),
    [anon_sym_way] = ACTIONS(211),
    [anon_sym_wet] = ACTIONS(211),
    [anon_sym_wgs84] = ACTIONS(211),
    [anon_sym_with] = ACTIONS(211),
    [anon_sym_within] = ACTIONS(211),
    [anon_sym_yes] = ACTIONS(211),
    [anon_sym_LPAREN] = ACTIONS(209),
    [anon_sym_DASH] = ACTIONS(211),
    [anon_sym_u2212] = ACTIONS(211),
    [anon_sym_u2013] = ACTIONS(211),
    [sym__glued] = ACTIONS(211),
    [sym_number] = ACTIONS(211),
    [sym_digit_name] = ACTIONS(211),
    [sym_comment] = ACTIONS(3),
  },
  [41] = {
    [ts_builtin_sym_end] = ACTIONS(213),
    [sym_name] = ACTIONS(215),
    [aux_sym__end_token1] = ACTIONS(213),
    [anon_sym_SEMI] = ACTIONS(213),
    [anon_sym_RBRACE] = ACTIONS(213),
    [anon_sym_use] = ACTIONS(215),
    [anon_sym_band] = ACTIONS(215),
    [anon_sym_let] = ACTIONS(215),
    [anon_sym_cable] = ACTIONS(215),
    [anon_sym_connector] = ACTIONS(215),
    [anon_sym_device] = ACTIONS(215),
    [anon_sym_instrument] = ACTIONS(215),
    [anon_sym_session] = ACTIONS(215),
    [anon_sym_station] = ACTIONS(215),
    [anon_sym_chain] = ACTIONS(215),
    [anon_sym_licence] = ACTIONS(215),
    [anon_sym_rules] = ACTIONS(215),
    [anon_sym_link] = ACTIONS(215),
    [anon_sym_variant] = ACTIONS(215),
    [anon_sym_accept] = ACTIONS(215),
    [anon_sym_transmit] = ACTIONS(215),
    [anon_sym_receive] = ACTIONS(215),
    [anon_sym_impedance] = ACTIONS(215),
    [anon_sym_velocity] = ACTIONS(215),
    [anon_sym_loss] = ACTIONS(215),
    [anon_sym_construction] = ACTIONS(215),
    [anon_sym_wires] = ACTIONS(215),
    [anon_sym_valid] = ACTIONS(215),
    [anon_sym_accuracy] = ACTIONS(215),
    [anon_sym_rating] = ACTIONS(215),
    [anon_sym_voltage] = ACTIONS(215),
    [anon_sym_size] = ACTIONS(215),
    [anon_sym_conductor] = ACTIONS(215),
    [anon_sym_source] = ACTIONS(215),
    [anon_sym_recalled] = ACTIONS(215),
    [anon_sym_joins] = ACTIONS(215),
    [anon_sym_limit] = ACTIONS(215),
    [anon_sym_family] = ACTIONS(215),
    [anon_sym_bump] = ACTIONS(215),
    [anon_sym_return_DASHloss] = ACTIONS(215),
    [anon_sym_swr] = ACTIONS(215),
    [anon_sym_kind] = ACTIONS(215),
    [anon_sym_high] = ACTIONS(215),
    [anon_sym_low] = ACTIONS(215),
    [anon_sym_port] = ACTIONS(215),
    [anon_sym_from] = ACTIONS(215),
    [anon_sym_isolation] = ACTIONS(215),
    [anon_sym_ratio] = ACTIONS(215),
    [anon_sym_split] = ACTIONS(215),
    [anon_sym_tee] = ACTIONS(215),
    [anon_sym_reversed] = ACTIONS(215),
    [anon_sym_passes] = ACTIONS(215),
    [anon_sym_gain] = ACTIONS(215),
    [anon_sym_noise] = ACTIONS(215),
    [anon_sym_excess] = ACTIONS(215),
    [anon_sym_ways] = ACTIONS(215),
    [anon_sym_coupled] = ACTIONS(215),
    [anon_sym_calibrated] = ACTIONS(215),
    [anon_sym_scale] = ACTIONS(215),
    [anon_sym_resolution] = ACTIONS(215),
    [anon_sym_due] = ACTIONS(215),
    [anon_sym_linearity] = ACTIONS(215),
    [anon_sym_repeatability] = ACTIONS(215),
    [anon_sym_directivity] = ACTIONS(215),
    [anon_sym_certificate] = ACTIONS(215),
    [anon_sym_load] = ACTIONS(215),
    [anon_sym_read] = ACTIONS(215),
    [anon_sym_temperature] = ACTIONS(215),
    [anon_sym_generator] = ACTIONS(215),
    [anon_sym_drift] = ACTIONS(215),
    [anon_sym_piece] = ACTIONS(215),
    [anon_sym_readings] = ACTIONS(215),
    [anon_sym_resonance] = ACTIONS(215),
    [anon_sym_delay] = ACTIONS(215),
    [anon_sym_phase] = ACTIONS(215),
    [anon_sym_adapter] = ACTIONS(215),
    [anon_sym_position] = ACTIONS(215),
    [anon_sym_ground] = ACTIONS(215),
    [anon_sym_place] = ACTIONS(215),
    [anon_sym_under] = ACTIONS(215),
    [anon_sym_beside] = ACTIONS(215),
    [anon_sym_spot] = ACTIONS(215),
    [anon_sym_alone] = ACTIONS(215),
    [anon_sym_site_DASHnoise] = ACTIONS(215),
    [anon_sym_transmitter] = ACTIONS(215),
    [anon_sym_receiver] = ACTIONS(215),
    [anon_sym_transceiver] = ACTIONS(215),
    [anon_sym_run] = ACTIONS(215),
    [anon_sym_jumper] = ACTIONS(215),
    [anon_sym_tail] = ACTIONS(215),
    [anon_sym_pad] = ACTIONS(215),
    [anon_sym_filter] = ACTIONS(215),
    [anon_sym_isolator] = ACTIONS(215),
    [anon_sym_circulator] = ACTIONS(215),
    [anon_sym_protector] = ACTIONS(215),
    [anon_sym_switch] = ACTIONS(215),
    [anon_sym_coupler] = ACTIONS(215),
    [anon_sym_meter] = ACTIONS(215),
    [anon_sym_balun] = ACTIONS(215),
    [anon_sym_tuner] = ACTIONS(215),
    [anon_sym_duplexer] = ACTIONS(215),
    [anon_sym_diplexer] = ACTIONS(215),
    [anon_sym_combiner] = ACTIONS(215),
    [anon_sym_divider] = ACTIONS(215),
    [anon_sym_amplifier] = ACTIONS(215),
    [anon_sym_preamplifier] = ACTIONS(215),
    [anon_sym_antenna] = ACTIONS(215),
    [anon_sym_branches] = ACTIONS(215),
    [anon_sym_expect] = ACTIONS(215),
    [anon_sym_authority] = ACTIONS(215),
    [anon_sym_jurisdiction] = ACTIONS(215),
    [anon_sym_service] = ACTIONS(215),
    [anon_sym_edition] = ACTIONS(215),
    [anon_sym_dated] = ACTIONS(215),
    [anon_sym_until] = ACTIONS(215),
    [anon_sym_holder] = ACTIONS(215),
    [anon_sym_class] = ACTIONS(215),
    [anon_sym_ask] = ACTIONS(215),
    [anon_sym_threshold] = ACTIONS(215),
    [anon_sym_fixed] = ACTIONS(215),
    [anon_sym_condition] = ACTIONS(215),
    [anon_sym_reflection] = ACTIONS(215),
    [anon_sym_field] = ACTIONS(215),
    [anon_sym_hop] = ACTIONS(215),
    [anon_sym_profile] = ACTIONS(215),
    [anon_sym_distance] = ACTIONS(215),
    [anon_sym_k_DASHfactor] = ACTIONS(215),
    [anon_sym_need] = ACTIONS(215),
    [anon_sym_model] = ACTIONS(215),
    [anon_sym_coverage] = ACTIONS(215),
    [anon_sym_take] = ACTIONS(215),
    [anon_sym_put] = ACTIONS(215),
    [anon_sym_branch] = ACTIONS(215),
    [anon_sym_inner] = ACTIONS(215),
    [anon_sym_outer] = ACTIONS(215),
    [anon_sym_permittivity] = ACTIONS(215),
    [anon_sym_loss_DASHtangent] = ACTIONS(215),
    [anon_sym_strand] = ACTIONS(215),
    [anon_sym_strand_DASHdiameter] = ACTIONS(215),
    [anon_sym_braid] = ACTIONS(215),
    [anon_sym_resistivity] = ACTIONS(215),
    [anon_sym_inner_DASHresistivity] = ACTIONS(215),
    [anon_sym_outer_DASHresistivity] = ACTIONS(215),
    [anon_sym_diameter] = ACTIONS(215),
    [anon_sym_spacing] = ACTIONS(215),
    [anon_sym_baseline] = ACTIONS(215),
    [anon_sym_through] = ACTIONS(215),
    [anon_sym_open] = ACTIONS(215),
    [anon_sym_short] = ACTIONS(215),
    [anon_sym_equalise] = ACTIONS(215),
    [anon_sym_power] = ACTIONS(215),
    [anon_sym_mode] = ACTIONS(215),
    [anon_sym_duty] = ACTIONS(215),
    [anon_sym_keyed] = ACTIONS(215),
    [anon_sym_foldback] = ACTIONS(215),
    [anon_sym_bandwidth] = ACTIONS(215),
    [anon_sym_sensitivity] = ACTIONS(215),
    [anon_sym_blocking] = ACTIONS(215),
    [anon_sym_efficiency] = ACTIONS(215),
    [anon_sym_height] = ACTIONS(215),
    [anon_sym_pattern] = ACTIONS(215),
    [anon_sym_haat] = ACTIONS(215),
    [anon_sym_radius] = ACTIONS(215),
    [anon_sym_fails] = ACTIONS(215),
    [anon_sym_GHz] = ACTIONS(215),
    [anon_sym_Hz] = ACTIONS(215),
    [anon_sym_MHz] = ACTIONS(215),
    [anon_sym_above] = ACTIONS(215),
    [anon_sym_added] = ACTIONS(215),
    [anon_sym_after] = ACTIONS(215),
    [anon_sym_against] = ACTIONS(215),
    [anon_sym_agl] = ACTIONS(215),
    [anon_sym_allocated] = ACTIONS(215),
    [anon_sym_am] = ACTIONS(215),
    [anon_sym_ambient] = ACTIONS(215),
    [anon_sym_amsl] = ACTIONS(215),
    [anon_sym_apart] = ACTIONS(215),
    [anon_sym_at] = ACTIONS(215),
    [anon_sym_averaging] = ACTIONS(215),
    [anon_sym_below] = ACTIONS(215),
    [anon_sym_beyond] = ACTIONS(215),
    [anon_sym_blank] = ACTIONS(215),
    [anon_sym_bow] = ACTIONS(215),
    [anon_sym_bullington] = ACTIONS(215),
    [anon_sym_by] = ACTIONS(215),
    [anon_sym_carrier] = ACTIONS(215),
    [anon_sym_cascade] = ACTIONS(215),
    [anon_sym_city] = ACTIONS(215),
    [anon_sym_clad] = ACTIONS(215),
    [anon_sym_confidence] = ACTIONS(215),
    [anon_sym_corrected] = ACTIONS(215),
    [anon_sym_cw] = ACTIONS(215),
    [anon_sym_dB] = ACTIONS(215),
    [anon_sym_dBW] = ACTIONS(215),
    [anon_sym_dBd] = ACTIONS(215),
    [anon_sym_dBi] = ACTIONS(215),
    [anon_sym_dBm] = ACTIONS(215),
    [anon_sym_data] = ACTIONS(215),
    [anon_sym_date] = ACTIONS(215),
    [anon_sym_datum] = ACTIONS(215),
    [anon_sym_dc_DASHinput] = ACTIONS(215),
    [anon_sym_degrees] = ACTIONS(215),
    [anon_sym_delivered] = ACTIONS(215),
    [anon_sym_desense] = ACTIONS(215),
    [anon_sym_displayed] = ACTIONS(215),
    [anon_sym_dms] = ACTIONS(215),
    [anon_sym_down] = ACTIONS(215),
    [anon_sym_eirp] = ACTIONS(215),
    [anon_sym_elevation] = ACTIONS(215),
    [anon_sym_ends] = ACTIONS(215),
    [anon_sym_erp] = ACTIONS(215),
    [anon_sym_etrs89] = ACTIONS(215),
    [anon_sym_figure] = ACTIONS(215),
    [anon_sym_fm] = ACTIONS(215),
    [anon_sym_for] = ACTIONS(215),
    [anon_sym_forward] = ACTIONS(215),
    [anon_sym_free_DASHspace] = ACTIONS(215),
    [anon_sym_frequency] = ACTIONS(215),
    [anon_sym_ft] = ACTIONS(215),
    [anon_sym_full] = ACTIONS(215),
    [anon_sym_guess] = ACTIONS(215),
    [anon_sym_hata_DASHopen] = ACTIONS(215),
    [anon_sym_hata_DASHsuburban] = ACTIONS(215),
    [anon_sym_hata_DASHurban] = ACTIONS(215),
    [anon_sym_height_DASHamsl] = ACTIONS(215),
    [anon_sym_horizontal] = ACTIONS(215),
    [anon_sym_if] = ACTIONS(215),
    [anon_sym_in] = ACTIONS(215),
    [anon_sym_input] = ACTIONS(215),
    [anon_sym_instead] = ACTIONS(215),
    [anon_sym_k] = ACTIONS(215),
    [anon_sym_kHz] = ACTIONS(215),
    [anon_sym_kW] = ACTIONS(215),
    [anon_sym_km] = ACTIONS(215),
    [anon_sym_latitude] = ACTIONS(215),
    [anon_sym_longitude] = ACTIONS(215),
    [anon_sym_m] = ACTIONS(215),
    [anon_sym_mW] = ACTIONS(215),
    [anon_sym_maximum] = ACTIONS(215),
    [anon_sym_mean] = ACTIONS(215),
    [anon_sym_medium] = ACTIONS(215),
    [anon_sym_nad27] = ACTIONS(215),
    [anon_sym_nad83] = ACTIONS(215),
    [anon_sym_net] = ACTIONS(215),
    [anon_sym_no] = ACTIONS(215),
    [anon_sym_nominal] = ACTIONS(215),
    [anon_sym_occupational] = ACTIONS(215),
    [anon_sym_of] = ACTIONS(215),
    [anon_sym_offset] = ACTIONS(215),
    [anon_sym_on] = ACTIONS(215),
    [anon_sym_one_DASHedge] = ACTIONS(215),
    [anon_sym_out] = ACTIONS(215),
    [anon_sym_output] = ACTIONS(215),
    [anon_sym_over] = ACTIONS(215),
    [anon_sym_pep] = ACTIONS(215),
    [anon_sym_per] = ACTIONS(215),
    [anon_sym_places] = ACTIONS(215),
    [anon_sym_public] = ACTIONS(215),
    [anon_sym_quiet_DASHrural] = ACTIONS(215),
    [anon_sym_quieting] = ACTIONS(215),
    [anon_sym_rated] = ACTIONS(215),
    [anon_sym_reactance] = ACTIONS(215),
    [anon_sym_reading] = ACTIONS(215),
    [anon_sym_realized] = ACTIONS(215),
    [anon_sym_receive_DASHfrequency] = ACTIONS(215),
    [anon_sym_receive_DASHloss] = ACTIONS(215),
    [anon_sym_reference] = ACTIONS(215),
    [anon_sym_reflected] = ACTIONS(215),
    [anon_sym_rejects] = ACTIONS(215),
    [anon_sym_residential] = ACTIONS(215),
    [anon_sym_rural] = ACTIONS(215),
    [anon_sym_series] = ACTIONS(215),
    [anon_sym_shared] = ACTIONS(215),
    [anon_sym_sheet] = ACTIONS(215),
    [anon_sym_shunt] = ACTIONS(215),
    [anon_sym_sinad] = ACTIONS(215),
    [anon_sym_since] = ACTIONS(215),
    [anon_sym_snr] = ACTIONS(215),
    [anon_sym_spread] = ACTIONS(215),
    [anon_sym_ssb] = ACTIONS(215),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(215),
    [anon_sym_then] = ACTIONS(215),
    [anon_sym_title] = ACTIONS(215),
    [anon_sym_to] = ACTIONS(215),
    [anon_sym_total] = ACTIONS(215),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(215),
    [anon_sym_two_DASHray] = ACTIONS(215),
    [anon_sym_typical] = ACTIONS(215),
    [anon_sym_up] = ACTIONS(215),
    [anon_sym_vertical] = ACTIONS(215),
    [anon_sym_way] = ACTIONS(215),
    [anon_sym_wet] = ACTIONS(215),
    [anon_sym_wgs84] = ACTIONS(215),
    [anon_sym_with] = ACTIONS(215),
    [anon_sym_within] = ACTIONS(215),
    [anon_sym_yes] = ACTIONS(215),
    [anon_sym_LPAREN] = ACTIONS(213),
    [anon_sym_DASH] = ACTIONS(215),
    [anon_sym_u2212] = ACTIONS(215),
    [anon_sym_u2013] = ACTIONS(215),
    [sym__glued] = ACTIONS(215),
    [sym_number] = ACTIONS(215),
    [sym_digit_name] = ACTIONS(215),
    [sym_comment] = ACTIONS(3),
  },
  [42] = {
    [ts_builtin_sym_end] = ACTIONS(217),
    [sym_name] = ACTIONS(219),
    [aux_sym__end_token1] = ACTIONS(217),
    [anon_sym_SEMI] = ACTIONS(217),
    [anon_sym_RBRACE] = ACTIONS(217),
    [anon_sym_use] = ACTIONS(219),
    [anon_sym_band] = ACTIONS(219),
    [anon_sym_let] = ACTIONS(219),
    [anon_sym_cable] = ACTIONS(219),
    [anon_sym_connector] = ACTIONS(219),
    [anon_sym_device] = ACTIONS(219),
    [anon_sym_instrument] = ACTIONS(219),
    [anon_sym_session] = ACTIONS(219),
    [anon_sym_station] = ACTIONS(219),
    [anon_sym_chain] = ACTIONS(219),
    [anon_sym_licence] = ACTIONS(219),
    [anon_sym_rules] = ACTIONS(219),
    [anon_sym_link] = ACTIONS(219),
    [anon_sym_variant] = ACTIONS(219),
    [anon_sym_accept] = ACTIONS(219),
    [anon_sym_transmit] = ACTIONS(219),
    [anon_sym_receive] = ACTIONS(219),
    [anon_sym_impedance] = ACTIONS(219),
    [anon_sym_velocity] = ACTIONS(219),
    [anon_sym_loss] = ACTIONS(219),
    [anon_sym_construction] = ACTIONS(219),
    [anon_sym_wires] = ACTIONS(219),
    [anon_sym_valid] = ACTIONS(219),
    [anon_sym_accuracy] = ACTIONS(219),
    [anon_sym_rating] = ACTIONS(219),
    [anon_sym_voltage] = ACTIONS(219),
    [anon_sym_size] = ACTIONS(219),
    [anon_sym_conductor] = ACTIONS(219),
    [anon_sym_source] = ACTIONS(219),
    [anon_sym_recalled] = ACTIONS(219),
    [anon_sym_joins] = ACTIONS(219),
    [anon_sym_limit] = ACTIONS(219),
    [anon_sym_family] = ACTIONS(219),
    [anon_sym_bump] = ACTIONS(219),
    [anon_sym_return_DASHloss] = ACTIONS(219),
    [anon_sym_swr] = ACTIONS(219),
    [anon_sym_kind] = ACTIONS(219),
    [anon_sym_high] = ACTIONS(219),
    [anon_sym_low] = ACTIONS(219),
    [anon_sym_port] = ACTIONS(219),
    [anon_sym_from] = ACTIONS(219),
    [anon_sym_isolation] = ACTIONS(219),
    [anon_sym_ratio] = ACTIONS(219),
    [anon_sym_split] = ACTIONS(219),
    [anon_sym_tee] = ACTIONS(219),
    [anon_sym_reversed] = ACTIONS(219),
    [anon_sym_passes] = ACTIONS(219),
    [anon_sym_gain] = ACTIONS(219),
    [anon_sym_noise] = ACTIONS(219),
    [anon_sym_excess] = ACTIONS(219),
    [anon_sym_ways] = ACTIONS(219),
    [anon_sym_coupled] = ACTIONS(219),
    [anon_sym_calibrated] = ACTIONS(219),
    [anon_sym_scale] = ACTIONS(219),
    [anon_sym_resolution] = ACTIONS(219),
    [anon_sym_due] = ACTIONS(219),
    [anon_sym_linearity] = ACTIONS(219),
    [anon_sym_repeatability] = ACTIONS(219),
    [anon_sym_directivity] = ACTIONS(219),
    [anon_sym_certificate] = ACTIONS(219),
    [anon_sym_load] = ACTIONS(219),
    [anon_sym_read] = ACTIONS(219),
    [anon_sym_temperature] = ACTIONS(219),
    [anon_sym_generator] = ACTIONS(219),
    [anon_sym_drift] = ACTIONS(219),
    [anon_sym_piece] = ACTIONS(219),
    [anon_sym_readings] = ACTIONS(219),
    [anon_sym_resonance] = ACTIONS(219),
    [anon_sym_delay] = ACTIONS(219),
    [anon_sym_phase] = ACTIONS(219),
    [anon_sym_adapter] = ACTIONS(219),
    [anon_sym_position] = ACTIONS(219),
    [anon_sym_ground] = ACTIONS(219),
    [anon_sym_place] = ACTIONS(219),
    [anon_sym_under] = ACTIONS(219),
    [anon_sym_beside] = ACTIONS(219),
    [anon_sym_spot] = ACTIONS(219),
    [anon_sym_alone] = ACTIONS(219),
    [anon_sym_site_DASHnoise] = ACTIONS(219),
    [anon_sym_transmitter] = ACTIONS(219),
    [anon_sym_receiver] = ACTIONS(219),
    [anon_sym_transceiver] = ACTIONS(219),
    [anon_sym_run] = ACTIONS(219),
    [anon_sym_jumper] = ACTIONS(219),
    [anon_sym_tail] = ACTIONS(219),
    [anon_sym_pad] = ACTIONS(219),
    [anon_sym_filter] = ACTIONS(219),
    [anon_sym_isolator] = ACTIONS(219),
    [anon_sym_circulator] = ACTIONS(219),
    [anon_sym_protector] = ACTIONS(219),
    [anon_sym_switch] = ACTIONS(219),
    [anon_sym_coupler] = ACTIONS(219),
    [anon_sym_meter] = ACTIONS(219),
    [anon_sym_balun] = ACTIONS(219),
    [anon_sym_tuner] = ACTIONS(219),
    [anon_sym_duplexer] = ACTIONS(219),
    [anon_sym_diplexer] = ACTIONS(219),
    [anon_sym_combiner] = ACTIONS(219),
    [anon_sym_divider] = ACTIONS(219),
    [anon_sym_amplifier] = ACTIONS(219),
    [anon_sym_preamplifier] = ACTIONS(219),
    [anon_sym_antenna] = ACTIONS(219),
    [anon_sym_branches] = ACTIONS(219),
    [anon_sym_expect] = ACTIONS(219),
    [anon_sym_authority] = ACTIONS(219),
    [anon_sym_jurisdiction] = ACTIONS(219),
    [anon_sym_service] = ACTIONS(219),
    [anon_sym_edition] = ACTIONS(219),
    [anon_sym_dated] = ACTIONS(219),
    [anon_sym_until] = ACTIONS(219),
    [anon_sym_holder] = ACTIONS(219),
    [anon_sym_class] = ACTIONS(219),
    [anon_sym_ask] = ACTIONS(219),
    [anon_sym_threshold] = ACTIONS(219),
    [anon_sym_fixed] = ACTIONS(219),
    [anon_sym_condition] = ACTIONS(219),
    [anon_sym_reflection] = ACTIONS(219),
    [anon_sym_field] = ACTIONS(219),
    [anon_sym_hop] = ACTIONS(219),
    [anon_sym_profile] = ACTIONS(219),
    [anon_sym_distance] = ACTIONS(219),
    [anon_sym_k_DASHfactor] = ACTIONS(219),
    [anon_sym_need] = ACTIONS(219),
    [anon_sym_model] = ACTIONS(219),
    [anon_sym_coverage] = ACTIONS(219),
    [anon_sym_take] = ACTIONS(219),
    [anon_sym_put] = ACTIONS(219),
    [anon_sym_branch] = ACTIONS(219),
    [anon_sym_inner] = ACTIONS(219),
    [anon_sym_outer] = ACTIONS(219),
    [anon_sym_permittivity] = ACTIONS(219),
    [anon_sym_loss_DASHtangent] = ACTIONS(219),
    [anon_sym_strand] = ACTIONS(219),
    [anon_sym_strand_DASHdiameter] = ACTIONS(219),
    [anon_sym_braid] = ACTIONS(219),
    [anon_sym_resistivity] = ACTIONS(219),
    [anon_sym_inner_DASHresistivity] = ACTIONS(219),
    [anon_sym_outer_DASHresistivity] = ACTIONS(219),
    [anon_sym_diameter] = ACTIONS(219),
    [anon_sym_spacing] = ACTIONS(219),
    [anon_sym_baseline] = ACTIONS(219),
    [anon_sym_through] = ACTIONS(219),
    [anon_sym_open] = ACTIONS(219),
    [anon_sym_short] = ACTIONS(219),
    [anon_sym_equalise] = ACTIONS(219),
    [anon_sym_power] = ACTIONS(219),
    [anon_sym_mode] = ACTIONS(219),
    [anon_sym_duty] = ACTIONS(219),
    [anon_sym_keyed] = ACTIONS(219),
    [anon_sym_foldback] = ACTIONS(219),
    [anon_sym_bandwidth] = ACTIONS(219),
    [anon_sym_sensitivity] = ACTIONS(219),
    [anon_sym_blocking] = ACTIONS(219),
    [anon_sym_efficiency] = ACTIONS(219),
    [anon_sym_height] = ACTIONS(219),
    [anon_sym_pattern] = ACTIONS(219),
    [anon_sym_haat] = ACTIONS(219),
    [anon_sym_radius] = ACTIONS(219),
    [anon_sym_fails] = ACTIONS(219),
    [anon_sym_GHz] = ACTIONS(219),
    [anon_sym_Hz] = ACTIONS(219),
    [anon_sym_MHz] = ACTIONS(219),
    [anon_sym_above] = ACTIONS(219),
    [anon_sym_added] = ACTIONS(219),
    [anon_sym_after] = ACTIONS(219),
    [anon_sym_against] = ACTIONS(219),
    [anon_sym_agl] = ACTIONS(219),
    [anon_sym_allocated] = ACTIONS(219),
    [anon_sym_am] = ACTIONS(219),
    [anon_sym_ambient] = ACTIONS(219),
    [anon_sym_amsl] = ACTIONS(219),
    [anon_sym_apart] = ACTIONS(219),
    [anon_sym_at] = ACTIONS(219),
    [anon_sym_averaging] = ACTIONS(219),
    [anon_sym_below] = ACTIONS(219),
    [anon_sym_beyond] = ACTIONS(219),
    [anon_sym_blank] = ACTIONS(219),
    [anon_sym_bow] = ACTIONS(219),
    [anon_sym_bullington] = ACTIONS(219),
    [anon_sym_by] = ACTIONS(219),
    [anon_sym_carrier] = ACTIONS(219),
    [anon_sym_cascade] = ACTIONS(219),
    [anon_sym_city] = ACTIONS(219),
    [anon_sym_clad] = ACTIONS(219),
    [anon_sym_confidence] = ACTIONS(219),
    [anon_sym_corrected] = ACTIONS(219),
    [anon_sym_cw] = ACTIONS(219),
    [anon_sym_dB] = ACTIONS(219),
    [anon_sym_dBW] = ACTIONS(219),
    [anon_sym_dBd] = ACTIONS(219),
    [anon_sym_dBi] = ACTIONS(219),
    [anon_sym_dBm] = ACTIONS(219),
    [anon_sym_data] = ACTIONS(219),
    [anon_sym_date] = ACTIONS(219),
    [anon_sym_datum] = ACTIONS(219),
    [anon_sym_dc_DASHinput] = ACTIONS(219),
    [anon_sym_degrees] = ACTIONS(219),
    [anon_sym_delivered] = ACTIONS(219),
    [anon_sym_desense] = ACTIONS(219),
    [anon_sym_displayed] = ACTIONS(219),
    [anon_sym_dms] = ACTIONS(219),
    [anon_sym_down] = ACTIONS(219),
    [anon_sym_eirp] = ACTIONS(219),
    [anon_sym_elevation] = ACTIONS(219),
    [anon_sym_ends] = ACTIONS(219),
    [anon_sym_erp] = ACTIONS(219),
    [anon_sym_etrs89] = ACTIONS(219),
    [anon_sym_figure] = ACTIONS(219),
    [anon_sym_fm] = ACTIONS(219),
    [anon_sym_for] = ACTIONS(219),
    [anon_sym_forward] = ACTIONS(219),
    [anon_sym_free_DASHspace] = ACTIONS(219),
    [anon_sym_frequency] = ACTIONS(219),
    [anon_sym_ft] = ACTIONS(219),
    [anon_sym_full] = ACTIONS(219),
    [anon_sym_guess] = ACTIONS(219),
    [anon_sym_hata_DASHopen] = ACTIONS(219),
    [anon_sym_hata_DASHsuburban] = ACTIONS(219),
    [anon_sym_hata_DASHurban] = ACTIONS(219),
    [anon_sym_height_DASHamsl] = ACTIONS(219),
    [anon_sym_horizontal] = ACTIONS(219),
    [anon_sym_if] = ACTIONS(219),
    [anon_sym_in] = ACTIONS(219),
    [anon_sym_input] = ACTIONS(219),
    [anon_sym_instead] = ACTIONS(219),
    [anon_sym_k] = ACTIONS(219),
    [anon_sym_kHz] = ACTIONS(219),
    [anon_sym_kW] = ACTIONS(219),
    [anon_sym_km] = ACTIONS(219),
    [anon_sym_latitude] = ACTIONS(219),
    [anon_sym_longitude] = ACTIONS(219),
    [anon_sym_m] = ACTIONS(219),
    [anon_sym_mW] = ACTIONS(219),
    [anon_sym_maximum] = ACTIONS(219),
    [anon_sym_mean] = ACTIONS(219),
    [anon_sym_medium] = ACTIONS(219),
    [anon_sym_nad27] = ACTIONS(219),
    [anon_sym_nad83] = ACTIONS(219),
    [anon_sym_net] = ACTIONS(219),
    [anon_sym_no] = ACTIONS(219),
    [anon_sym_nominal] = ACTIONS(219),
    [anon_sym_occupational] = ACTIONS(219),
    [anon_sym_of] = ACTIONS(219),
    [anon_sym_offset] = ACTIONS(219),
    [anon_sym_on] = ACTIONS(219),
    [anon_sym_one_DASHedge] = ACTIONS(219),
    [anon_sym_out] = ACTIONS(219),
    [anon_sym_output] = ACTIONS(219),
    [anon_sym_over] = ACTIONS(219),
    [anon_sym_pep] = ACTIONS(219),
    [anon_sym_per] = ACTIONS(219),
    [anon_sym_places] = ACTIONS(219),
    [anon_sym_public] = ACTIONS(219),
    [anon_sym_quiet_DASHrural] = ACTIONS(219),
    [anon_sym_quieting] = ACTIONS(219),
    [anon_sym_rated] = ACTIONS(219),
    [anon_sym_reactance] = ACTIONS(219),
    [anon_sym_reading] = ACTIONS(219),
    [anon_sym_realized] = ACTIONS(219),
    [anon_sym_receive_DASHfrequency] = ACTIONS(219),
    [anon_sym_receive_DASHloss] = ACTIONS(219),
    [anon_sym_reference] = ACTIONS(219),
    [anon_sym_reflected] = ACTIONS(219),
    [anon_sym_rejects] = ACTIONS(219),
    [anon_sym_residential] = ACTIONS(219),
    [anon_sym_rural] = ACTIONS(219),
    [anon_sym_series] = ACTIONS(219),
    [anon_sym_shared] = ACTIONS(219),
    [anon_sym_sheet] = ACTIONS(219),
    [anon_sym_shunt] = ACTIONS(219),
    [anon_sym_sinad] = ACTIONS(219),
    [anon_sym_since] = ACTIONS(219),
    [anon_sym_snr] = ACTIONS(219),
    [anon_sym_spread] = ACTIONS(219),
    [anon_sym_ssb] = ACTIONS(219),
    [anon_sym_ssb_DASHprocessed] = ACTIONS(219),
    [anon_sym_then] = ACTIONS(219),
    [anon_sym_title] = ACTIONS(219),
    [anon_sym_to] = ACTIONS(219),
    [anon_sym_total] = ACTIONS(219),
    [anon_sym_transmit_DASHfrequency] = ACTIONS(219),
    [anon_sym_two_DASHray] = ACTIONS(219),
    [anon_sym_typical] = ACTIONS(219),
    [anon_sym_up] = ACTIONS(219),
    [anon_sym_vertical] = ACTIONS(219),
    [anon_sym_way] = ACTIONS(219),
    [anon_sym_wet] = ACTIONS(219),
    [anon_sym_wgs84] = ACTIONS(219),
    [anon_sym_with] = ACTIONS(219),
    [anon_sym_within] = ACTIONS(219),
    [anon_sym_yes] = ACTIONS(219),
    [anon_sym_LPAREN] = ACTIONS(217),
    [anon_sym_DASH] = ACTIONS(219),
    [anon_sym_u2212] = ACTIONS(219),
    [anon_sym_u2013] = ACTIONS(219),
    [sym__glued] = ACTIONS(219),
    [sym_number] = ACTIONS(219),
    [sym_digit_name] = ACTIONS(219),
    [sym_comment] = ACTIONS(3),
  },
  [43] = {
    [sym_unit] = STATE(52),
    [anon_sym_GHz] = ACTIONS(221),
    [anon_sym_Hz] = ACTIONS(221),
    [anon_sym_MHz] = ACTIONS(221),
    [anon_sym_dB] = ACTIONS(223),
    [anon_sym_dBW] = ACTIONS(221),
    [anon_sym_dBd] = ACTIONS(221),
    [anon_sym_dBi] = ACTIONS(221),
    [anon_sym_dBm] = ACTIONS(221),
    [anon_sym_ft] = ACTIONS(221),
    [anon_sym_in] = ACTIONS(221),
    [anon_sym_kHz] = ACTIONS(221),
    [anon_sym_kW] = ACTIONS(221),
    [anon_sym_km] = ACTIONS(221),
    [anon_sym_m] = ACTIONS(223),
    [anon_sym_mW] = ACTIONS(223),
    [anon_sym_per] = ACTIONS(225),
    [anon_sym_RPAREN] = ACTIONS(23),
    [anon_sym_DASH] = ACTIONS(23),
    [anon_sym_u2212] = ACTIONS(23),
    [anon_sym_u2013] = ACTIONS(23),
    [anon_sym_PLUS] = ACTIONS(23),
    [anon_sym_STAR] = ACTIONS(23),
    [anon_sym_SLASH] = ACTIONS(25),
    [anon_sym_CARET] = ACTIONS(23),
    [aux_sym_unit_token1] = ACTIONS(221),
    [aux_sym_unit_token2] = ACTIONS(221),
    [aux_sym_unit_token3] = ACTIONS(221),
    [aux_sym_unit_token4] = ACTIONS(221),
    [aux_sym_unit_token5] = ACTIONS(221),
    [aux_sym_unit_token6] = ACTIONS(221),
    [anon_sym_wavelengths] = ACTIONS(221),
    [anon_sym_wavelength] = ACTIONS(223),
    [aux_sym_unit_token7] = ACTIONS(223),
    [aux_sym_unit_token8] = ACTIONS(223),
    [aux_sym_unit_token9] = ACTIONS(221),
    [aux_sym_unit_token10] = ACTIONS(221),
    [aux_sym_unit_token11] = ACTIONS(221),
    [aux_sym_unit_token12] = ACTIONS(221),
    [anon_sym_ohm_DASHm] = ACTIONS(221),
    [aux_sym_unit_token13] = ACTIONS(221),
    [aux_sym_unit_token14] = ACTIONS(221),
    [aux_sym_unit_token15] = ACTIONS(221),
    [anon_sym_degC] = ACTIONS(221),
    [anon_sym_degF] = ACTIONS(221),
    [anon_sym_ohms] = ACTIONS(221),
    [aux_sym_unit_token16] = ACTIONS(221),
    [aux_sym_unit_token17] = ACTIONS(221),
    [aux_sym_unit_token18] = ACTIONS(221),
    [anon_sym_deg] = ACTIONS(223),
    [anon_sym_min] = ACTIONS(221),
    [anon_sym_ohm] = ACTIONS(223),
    [anon_sym_cm] = ACTIONS(221),
    [anon_sym_kV] = ACTIONS(221),
    [anon_sym_mi] = ACTIONS(223),
    [anon_sym_mm] = ACTIONS(221),
    [anon_sym_ms] = ACTIONS(221),
    [anon_sym_ns] = ACTIONS(221),
    [anon_sym_uV] = ACTIONS(221),
    [anon_sym_uW] = ACTIONS(221),
    [anon_sym_us] = ACTIONS(221),
    [anon_sym_yd] = ACTIONS(221),
    [anon_sym_u00b0C] = ACTIONS(221),
    [anon_sym_u00b0F] = ACTIONS(221),
    [anon_sym_u00b5V] = ACTIONS(221),
    [anon_sym_u00b5W] = ACTIONS(221),
    [anon_sym_u00b5s] = ACTIONS(221),
    [anon_sym_u03a9m] = ACTIONS(221),
    [anon_sym_u03bcV] = ACTIONS(221),
    [anon_sym_u03bcW] = ACTIONS(221),
    [anon_sym_u03bcs] = ACTIONS(221),
    [anon_sym_u2126m] = ACTIONS(221),
    [anon_sym_PERCENT] = ACTIONS(221),
    [anon_sym_A] = ACTIONS(223),
    [anon_sym_V] = ACTIONS(223),
    [anon_sym_W] = ACTIONS(223),
    [anon_sym_h] = ACTIONS(221),
    [anon_sym_s] = ACTIONS(221),
    [anon_sym_u00b0] = ACTIONS(223),
    [anon_sym_u03a9] = ACTIONS(223),
    [anon_sym_u03bb] = ACTIONS(221),
    [anon_sym_u2126] = ACTIONS(223),
    [sym_comment] = ACTIONS(3),
  },
};

static const uint16_t ts_small_parse_table[] = {
  [0] = 9,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(7), 1,
      sym_digit_name,
    ACTIONS(15), 1,
      anon_sym_LPAREN,
    ACTIONS(19), 1,
      sym__glued,
    ACTIONS(21), 1,
      sym_number,
    ACTIONS(227), 1,
      sym_name,
    STATE(19), 1,
      sym__expression,
    ACTIONS(17), 3,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
    STATE(13), 4,
      sym_parenthesized_expression,
      sym_negation,
      sym_binary_expression,
      sym_quantity,
  [33] = 9,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(229), 1,
      sym_name,
    ACTIONS(231), 1,
      anon_sym_LPAREN,
    ACTIONS(235), 1,
      sym__glued,
    ACTIONS(237), 1,
      sym_number,
    ACTIONS(239), 1,
      sym_digit_name,
    STATE(21), 1,
      sym__expression,
    ACTIONS(233), 3,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
    STATE(28), 4,
      sym_parenthesized_expression,
      sym_negation,
      sym_binary_expression,
      sym_quantity,
  [66] = 9,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(229), 1,
      sym_name,
    ACTIONS(231), 1,
      anon_sym_LPAREN,
    ACTIONS(235), 1,
      sym__glued,
    ACTIONS(237), 1,
      sym_number,
    ACTIONS(239), 1,
      sym_digit_name,
    STATE(22), 1,
      sym__expression,
    ACTIONS(233), 3,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
    STATE(28), 4,
      sym_parenthesized_expression,
      sym_negation,
      sym_binary_expression,
      sym_quantity,
  [99] = 9,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(241), 1,
      sym_name,
    ACTIONS(243), 1,
      anon_sym_LPAREN,
    ACTIONS(247), 1,
      sym__glued,
    ACTIONS(249), 1,
      sym_number,
    ACTIONS(251), 1,
      sym_digit_name,
    STATE(60), 1,
      sym__expression,
    ACTIONS(245), 3,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
    STATE(61), 4,
      sym_parenthesized_expression,
      sym_negation,
      sym_binary_expression,
      sym_quantity,
  [132] = 9,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(241), 1,
      sym_name,
    ACTIONS(243), 1,
      anon_sym_LPAREN,
    ACTIONS(247), 1,
      sym__glued,
    ACTIONS(249), 1,
      sym_number,
    ACTIONS(251), 1,
      sym_digit_name,
    STATE(63), 1,
      sym__expression,
    ACTIONS(245), 3,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
    STATE(61), 4,
      sym_parenthesized_expression,
      sym_negation,
      sym_binary_expression,
      sym_quantity,
  [165] = 9,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(229), 1,
      sym_name,
    ACTIONS(231), 1,
      anon_sym_LPAREN,
    ACTIONS(235), 1,
      sym__glued,
    ACTIONS(237), 1,
      sym_number,
    ACTIONS(239), 1,
      sym_digit_name,
    STATE(23), 1,
      sym__expression,
    ACTIONS(233), 3,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
    STATE(28), 4,
      sym_parenthesized_expression,
      sym_negation,
      sym_binary_expression,
      sym_quantity,
  [198] = 9,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(241), 1,
      sym_name,
    ACTIONS(243), 1,
      anon_sym_LPAREN,
    ACTIONS(247), 1,
      sym__glued,
    ACTIONS(249), 1,
      sym_number,
    ACTIONS(251), 1,
      sym_digit_name,
    STATE(58), 1,
      sym__expression,
    ACTIONS(245), 3,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
    STATE(61), 4,
      sym_parenthesized_expression,
      sym_negation,
      sym_binary_expression,
      sym_quantity,
  [231] = 9,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(241), 1,
      sym_name,
    ACTIONS(243), 1,
      anon_sym_LPAREN,
    ACTIONS(247), 1,
      sym__glued,
    ACTIONS(249), 1,
      sym_number,
    ACTIONS(251), 1,
      sym_digit_name,
    STATE(54), 1,
      sym__expression,
    ACTIONS(245), 3,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
    STATE(61), 4,
      sym_parenthesized_expression,
      sym_negation,
      sym_binary_expression,
      sym_quantity,
  [264] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(143), 1,
      anon_sym_SLASH,
    ACTIONS(253), 1,
      anon_sym_per,
    ACTIONS(141), 7,
      anon_sym_RPAREN,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [283] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(139), 1,
      anon_sym_SLASH,
    ACTIONS(137), 8,
      anon_sym_per,
      anon_sym_RPAREN,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [300] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(255), 1,
      anon_sym_RPAREN,
    ACTIONS(259), 1,
      anon_sym_SLASH,
    ACTIONS(257), 6,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [318] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(131), 1,
      anon_sym_SLASH,
    ACTIONS(129), 7,
      anon_sym_RPAREN,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [334] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(153), 1,
      anon_sym_SLASH,
    ACTIONS(151), 7,
      anon_sym_RPAREN,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [350] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(149), 1,
      anon_sym_SLASH,
    ACTIONS(147), 7,
      anon_sym_RPAREN,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [366] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(157), 1,
      anon_sym_SLASH,
    ACTIONS(155), 7,
      anon_sym_RPAREN,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [382] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(161), 1,
      anon_sym_SLASH,
    ACTIONS(159), 7,
      anon_sym_RPAREN,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [398] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(259), 1,
      anon_sym_SLASH,
    ACTIONS(261), 1,
      anon_sym_RPAREN,
    ACTIONS(257), 6,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [416] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(25), 1,
      anon_sym_SLASH,
    ACTIONS(23), 7,
      anon_sym_RPAREN,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [432] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(135), 1,
      anon_sym_SLASH,
    ACTIONS(133), 7,
      anon_sym_RPAREN,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [448] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(259), 1,
      anon_sym_SLASH,
    ACTIONS(263), 1,
      anon_sym_RPAREN,
    ACTIONS(257), 6,
      anon_sym_DASH,
      anon_sym_u2212,
      anon_sym_u2013,
      anon_sym_PLUS,
      anon_sym_STAR,
      anon_sym_CARET,
  [466] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(267), 1,
      anon_sym_LBRACE,
    STATE(42), 1,
      sym_block,
    ACTIONS(265), 4,
      ts_builtin_sym_end,
      aux_sym__end_token1,
      anon_sym_SEMI,
      anon_sym_RBRACE,
  [482] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(271), 1,
      anon_sym_RBRACE,
    STATE(39), 1,
      sym__end,
    ACTIONS(269), 2,
      aux_sym__end_token1,
      anon_sym_SEMI,
  [496] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(273), 1,
      ts_builtin_sym_end,
    STATE(39), 1,
      sym__end,
    ACTIONS(269), 2,
      aux_sym__end_token1,
      anon_sym_SEMI,
  [510] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(113), 1,
      anon_sym_RBRACE,
    STATE(39), 1,
      sym__end,
    ACTIONS(269), 2,
      aux_sym__end_token1,
      anon_sym_SEMI,
  [524] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(105), 1,
      ts_builtin_sym_end,
    STATE(39), 1,
      sym__end,
    ACTIONS(269), 2,
      aux_sym__end_token1,
      anon_sym_SEMI,
  [538] = 3,
    ACTIONS(3), 1,
      sym_comment,
    STATE(39), 1,
      sym__end,
    ACTIONS(269), 2,
      aux_sym__end_token1,
      anon_sym_SEMI,
  [549] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(15), 1,
      anon_sym_LPAREN,
    ACTIONS(275), 1,
      sym_name,
    STATE(14), 1,
      sym_parenthesized_expression,
  [562] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(243), 1,
      anon_sym_LPAREN,
    ACTIONS(277), 1,
      sym_name,
    STATE(62), 1,
      sym_parenthesized_expression,
  [575] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(231), 1,
      anon_sym_LPAREN,
    ACTIONS(279), 1,
      sym_name,
    STATE(26), 1,
      sym_parenthesized_expression,
  [588] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(281), 1,
      sym_number,
  [595] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(283), 1,
      sym_root,
  [602] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(285), 1,
      sym_root,
  [609] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(287), 1,
      sym_root,
  [616] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(289), 1,
      sym_root,
  [623] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(291), 1,
      sym_root,
  [630] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(293), 1,
      sym_root,
  [637] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(295), 1,
      ts_builtin_sym_end,
};

static const uint32_t ts_small_parse_table_map[] = {
  [SMALL_STATE(44)] = 0,
  [SMALL_STATE(45)] = 33,
  [SMALL_STATE(46)] = 66,
  [SMALL_STATE(47)] = 99,
  [SMALL_STATE(48)] = 132,
  [SMALL_STATE(49)] = 165,
  [SMALL_STATE(50)] = 198,
  [SMALL_STATE(51)] = 231,
  [SMALL_STATE(52)] = 264,
  [SMALL_STATE(53)] = 283,
  [SMALL_STATE(54)] = 300,
  [SMALL_STATE(55)] = 318,
  [SMALL_STATE(56)] = 334,
  [SMALL_STATE(57)] = 350,
  [SMALL_STATE(58)] = 366,
  [SMALL_STATE(59)] = 382,
  [SMALL_STATE(60)] = 398,
  [SMALL_STATE(61)] = 416,
  [SMALL_STATE(62)] = 432,
  [SMALL_STATE(63)] = 448,
  [SMALL_STATE(64)] = 466,
  [SMALL_STATE(65)] = 482,
  [SMALL_STATE(66)] = 496,
  [SMALL_STATE(67)] = 510,
  [SMALL_STATE(68)] = 524,
  [SMALL_STATE(69)] = 538,
  [SMALL_STATE(70)] = 549,
  [SMALL_STATE(71)] = 562,
  [SMALL_STATE(72)] = 575,
  [SMALL_STATE(73)] = 588,
  [SMALL_STATE(74)] = 595,
  [SMALL_STATE(75)] = 602,
  [SMALL_STATE(76)] = 609,
  [SMALL_STATE(77)] = 616,
  [SMALL_STATE(78)] = 623,
  [SMALL_STATE(79)] = 630,
  [SMALL_STATE(80)] = 637,
};

static const TSParseActionEntry ts_parse_actions[] = {
  [0] = {.entry = {.count = 0, .reusable = false}},
  [1] = {.entry = {.count = 1, .reusable = false}}, RECOVER(),
  [3] = {.entry = {.count = 1, .reusable = true}}, SHIFT_EXTRA(),
  [5] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_source_file, 0, 0, 0),
  [7] = {.entry = {.count = 1, .reusable = false}}, SHIFT(13),
  [9] = {.entry = {.count = 1, .reusable = true}}, SHIFT(8),
  [11] = {.entry = {.count = 1, .reusable = false}}, SHIFT(36),
  [13] = {.entry = {.count = 1, .reusable = false}}, SHIFT(33),
  [15] = {.entry = {.count = 1, .reusable = true}}, SHIFT(47),
  [17] = {.entry = {.count = 1, .reusable = false}}, SHIFT(70),
  [19] = {.entry = {.count = 1, .reusable = false}}, SHIFT(12),
  [21] = {.entry = {.count = 1, .reusable = false}}, SHIFT(2),
  [23] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__expression, 1, 0, 0),
  [25] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym__expression, 1, 0, 0),
  [27] = {.entry = {.count = 1, .reusable = false}}, SHIFT(15),
  [29] = {.entry = {.count = 1, .reusable = false}}, SHIFT(79),
  [31] = {.entry = {.count = 1, .reusable = true}}, SHIFT(15),
  [33] = {.entry = {.count = 1, .reusable = false}}, SHIFT(30),
  [35] = {.entry = {.count = 1, .reusable = false}}, SHIFT(77),
  [37] = {.entry = {.count = 1, .reusable = true}}, SHIFT(30),
  [39] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__head, 1, 0, 0),
  [41] = {.entry = {.count = 1, .reusable = false}}, SHIFT(37),
  [43] = {.entry = {.count = 1, .reusable = true}}, SHIFT(5),
  [45] = {.entry = {.count = 1, .reusable = false}}, SHIFT(5),
  [47] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__head, 2, 0, 0),
  [49] = {.entry = {.count = 1, .reusable = true}}, SHIFT(6),
  [51] = {.entry = {.count = 1, .reusable = false}}, SHIFT(6),
  [53] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym__head_repeat1, 2, 0, 0),
  [55] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__head_repeat1, 2, 0, 0), SHIFT_REPEAT(13),
  [58] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__head_repeat1, 2, 0, 0), SHIFT_REPEAT(37),
  [61] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym__head_repeat1, 2, 0, 0), SHIFT_REPEAT(6),
  [64] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym__head_repeat1, 2, 0, 0), SHIFT_REPEAT(47),
  [67] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__head_repeat1, 2, 0, 0), SHIFT_REPEAT(70),
  [70] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__head_repeat1, 2, 0, 0), SHIFT_REPEAT(12),
  [73] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__head_repeat1, 2, 0, 0), SHIFT_REPEAT(6),
  [76] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__head_repeat1, 2, 0, 0), SHIFT_REPEAT(2),
  [79] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0),
  [81] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(13),
  [84] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(7),
  [87] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(36),
  [90] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(33),
  [93] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(47),
  [96] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(70),
  [99] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(12),
  [102] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(2),
  [105] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_source_file, 1, 0, 0),
  [107] = {.entry = {.count = 1, .reusable = true}}, SHIFT(7),
  [109] = {.entry = {.count = 1, .reusable = true}}, SHIFT(10),
  [111] = {.entry = {.count = 1, .reusable = true}}, SHIFT(38),
  [113] = {.entry = {.count = 1, .reusable = true}}, SHIFT(40),
  [115] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__value, 1, 0, 0),
  [117] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym__value, 1, 0, 0),
  [119] = {.entry = {.count = 1, .reusable = false}}, SHIFT(73),
  [121] = {.entry = {.count = 1, .reusable = false}}, SHIFT(46),
  [123] = {.entry = {.count = 1, .reusable = true}}, SHIFT(45),
  [125] = {.entry = {.count = 1, .reusable = false}}, SHIFT(44),
  [127] = {.entry = {.count = 1, .reusable = true}}, SHIFT(44),
  [129] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_quantity, 1, 0, 0),
  [131] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_quantity, 1, 0, 0),
  [133] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_negation, 2, 0, 0),
  [135] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_negation, 2, 0, 0),
  [137] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_unit, 1, 0, 0),
  [139] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_unit, 1, 0, 0),
  [141] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_quantity, 2, 0, 0),
  [143] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_quantity, 2, 0, 0),
  [145] = {.entry = {.count = 1, .reusable = false}}, SHIFT(74),
  [147] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_quantity, 3, 0, 0),
  [149] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_quantity, 3, 0, 0),
  [151] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_parenthesized_expression, 3, 0, 0),
  [153] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_parenthesized_expression, 3, 0, 0),
  [155] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_binary_expression, 3, 0, 2),
  [157] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_binary_expression, 3, 0, 2),
  [159] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_quantity, 4, 0, 0),
  [161] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_quantity, 4, 0, 0),
  [163] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_tolerance, 3, 0, 1),
  [165] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_tolerance, 3, 0, 1),
  [167] = {.entry = {.count = 1, .reusable = false}}, SHIFT(49),
  [169] = {.entry = {.count = 1, .reusable = true}}, SHIFT(49),
  [171] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_range, 3, 0, 0),
  [173] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_range, 3, 0, 0),
  [175] = {.entry = {.count = 1, .reusable = false}}, SHIFT(78),
  [177] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_tolerance, 4, 0, 1),
  [179] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_tolerance, 4, 0, 1),
  [181] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_only_word, 1, 0, 0),
  [183] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_only_word, 1, 0, 0),
  [185] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_coverage, 2, 0, 0),
  [187] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_coverage, 2, 0, 0),
  [189] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_tolerance, 2, 0, 0),
  [191] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_tolerance, 2, 0, 0),
  [193] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_keyword, 1, 0, 0),
  [195] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_keyword, 1, 0, 0),
  [197] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_word, 1, 0, 0),
  [199] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_word, 1, 0, 0),
  [201] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_block, 2, 0, 0),
  [203] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_block, 2, 0, 0),
  [205] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__line, 2, 0, 0),
  [207] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym__line, 2, 0, 0),
  [209] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_block, 3, 0, 0),
  [211] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_block, 3, 0, 0),
  [213] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_block, 4, 0, 0),
  [215] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_block, 4, 0, 0),
  [217] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_block_statement, 2, 0, 0),
  [219] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_block_statement, 2, 0, 0),
  [221] = {.entry = {.count = 1, .reusable = true}}, SHIFT(53),
  [223] = {.entry = {.count = 1, .reusable = false}}, SHIFT(53),
  [225] = {.entry = {.count = 1, .reusable = true}}, SHIFT(75),
  [227] = {.entry = {.count = 1, .reusable = true}}, SHIFT(13),
  [229] = {.entry = {.count = 1, .reusable = true}}, SHIFT(28),
  [231] = {.entry = {.count = 1, .reusable = true}}, SHIFT(48),
  [233] = {.entry = {.count = 1, .reusable = false}}, SHIFT(72),
  [235] = {.entry = {.count = 1, .reusable = false}}, SHIFT(25),
  [237] = {.entry = {.count = 1, .reusable = false}}, SHIFT(3),
  [239] = {.entry = {.count = 1, .reusable = false}}, SHIFT(28),
  [241] = {.entry = {.count = 1, .reusable = true}}, SHIFT(61),
  [243] = {.entry = {.count = 1, .reusable = true}}, SHIFT(51),
  [245] = {.entry = {.count = 1, .reusable = false}}, SHIFT(71),
  [247] = {.entry = {.count = 1, .reusable = false}}, SHIFT(55),
  [249] = {.entry = {.count = 1, .reusable = false}}, SHIFT(43),
  [251] = {.entry = {.count = 1, .reusable = false}}, SHIFT(61),
  [253] = {.entry = {.count = 1, .reusable = true}}, SHIFT(76),
  [255] = {.entry = {.count = 1, .reusable = true}}, SHIFT(56),
  [257] = {.entry = {.count = 1, .reusable = true}}, SHIFT(50),
  [259] = {.entry = {.count = 1, .reusable = false}}, SHIFT(50),
  [261] = {.entry = {.count = 1, .reusable = true}}, SHIFT(18),
  [263] = {.entry = {.count = 1, .reusable = true}}, SHIFT(24),
  [265] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_statement, 1, 0, 0),
  [267] = {.entry = {.count = 1, .reusable = true}}, SHIFT(9),
  [269] = {.entry = {.count = 1, .reusable = true}}, SHIFT(39),
  [271] = {.entry = {.count = 1, .reusable = true}}, SHIFT(41),
  [273] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_source_file, 2, 0, 0),
  [275] = {.entry = {.count = 1, .reusable = true}}, SHIFT(14),
  [277] = {.entry = {.count = 1, .reusable = true}}, SHIFT(62),
  [279] = {.entry = {.count = 1, .reusable = true}}, SHIFT(26),
  [281] = {.entry = {.count = 1, .reusable = true}}, SHIFT(34),
  [283] = {.entry = {.count = 1, .reusable = true}}, SHIFT(20),
  [285] = {.entry = {.count = 1, .reusable = true}}, SHIFT(57),
  [287] = {.entry = {.count = 1, .reusable = true}}, SHIFT(59),
  [289] = {.entry = {.count = 1, .reusable = true}}, SHIFT(27),
  [291] = {.entry = {.count = 1, .reusable = true}}, SHIFT(31),
  [293] = {.entry = {.count = 1, .reusable = true}}, SHIFT(17),
  [295] = {.entry = {.count = 1, .reusable = true}},  ACCEPT_INPUT(),
};

#ifdef __cplusplus
extern "C" {
#endif
#ifdef TREE_SITTER_HIDE_SYMBOLS
#define TS_PUBLIC
#elif defined(_WIN32)
#define TS_PUBLIC __declspec(dllexport)
#else
#define TS_PUBLIC __attribute__((visibility("default")))
#endif

TS_PUBLIC const TSLanguage *tree_sitter_downlead(void) {
  static const TSLanguage language = {
    .version = LANGUAGE_VERSION,
    .symbol_count = SYMBOL_COUNT,
    .alias_count = ALIAS_COUNT,
    .token_count = TOKEN_COUNT,
    .external_token_count = EXTERNAL_TOKEN_COUNT,
    .state_count = STATE_COUNT,
    .large_state_count = LARGE_STATE_COUNT,
    .production_id_count = PRODUCTION_ID_COUNT,
    .field_count = FIELD_COUNT,
    .max_alias_sequence_length = MAX_ALIAS_SEQUENCE_LENGTH,
    .parse_table = &ts_parse_table[0][0],
    .small_parse_table = ts_small_parse_table,
    .small_parse_table_map = ts_small_parse_table_map,
    .parse_actions = ts_parse_actions,
    .symbol_names = ts_symbol_names,
    .field_names = ts_field_names,
    .field_map_slices = ts_field_map_slices,
    .field_map_entries = ts_field_map_entries,
    .symbol_metadata = ts_symbol_metadata,
    .public_symbol_map = ts_symbol_map,
    .alias_map = ts_non_terminal_alias_map,
    .alias_sequences = &ts_alias_sequences[0][0],
    .lex_modes = ts_lex_modes,
    .lex_fn = ts_lex,
    .keyword_lex_fn = ts_lex_keywords,
    .keyword_capture_token = sym_name,
    .primary_state_ids = ts_primary_state_ids,
  };
  return &language;
}
#ifdef __cplusplus
}
#endif
