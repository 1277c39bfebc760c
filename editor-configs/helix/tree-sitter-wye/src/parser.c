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
#define STATE_COUNT 27
#define LARGE_STATE_COUNT 25
#define SYMBOL_COUNT 50
#define ALIAS_COUNT 0
#define TOKEN_COUNT 43
#define EXTERNAL_TOKEN_COUNT 0
#define FIELD_COUNT 0
#define MAX_ALIAS_SEQUENCE_LENGTH 3
#define PRODUCTION_ID_COUNT 1

enum ts_symbol_identifiers {
  sym_doc = 1,
  sym_comment = 2,
  sym_port = 3,
  sym_text = 4,
  sym__number = 5,
  sym__fraction = 6,
  sym__tight_quantity = 7,
  sym__tight_volts = 8,
  sym__tight_sets = 9,
  sym__tight_trade_size = 10,
  sym__tight_size = 11,
  sym__tight_dc = 12,
  sym__gauge = 13,
  sym__tight_run = 14,
  sym__run_of = 15,
  sym__cable_of = 16,
  sym__pair = 17,
  sym__short_pair = 18,
  sym__tight_short_pair = 19,
  sym__band = 20,
  sym__range = 21,
  sym__list = 22,
  sym__date = 23,
  sym__poles = 24,
  sym__unit = 25,
  sym__volts = 26,
  sym__kilovolts = 27,
  sym__phases = 28,
  sym__sets = 29,
  sym__trade_unit = 30,
  sym__area = 31,
  sym__square_mm = 32,
  sym_name = 33,
  sym_legs = 34,
  sym_mark = 35,
  sym_statement = 36,
  sym_kind = 37,
  sym_key = 38,
  sym_flag = 39,
  sym_action = 40,
  sym_link = 41,
  sym__other = 42,
  sym_model = 43,
  sym_voltage = 44,
  sym_conductor = 45,
  sym_quantity = 46,
  sym_count = 47,
  sym_other = 48,
  aux_sym_model_repeat1 = 49,
};

static const char * const ts_symbol_names[] = {
  [ts_builtin_sym_end] = "end",
  [sym_doc] = "doc",
  [sym_comment] = "comment",
  [sym_port] = "port",
  [sym_text] = "text",
  [sym__number] = "_number",
  [sym__fraction] = "_fraction",
  [sym__tight_quantity] = "_tight_quantity",
  [sym__tight_volts] = "_tight_volts",
  [sym__tight_sets] = "_tight_sets",
  [sym__tight_trade_size] = "_tight_trade_size",
  [sym__tight_size] = "_tight_size",
  [sym__tight_dc] = "_tight_dc",
  [sym__gauge] = "_gauge",
  [sym__tight_run] = "_tight_run",
  [sym__run_of] = "_run_of",
  [sym__cable_of] = "_cable_of",
  [sym__pair] = "_pair",
  [sym__short_pair] = "_short_pair",
  [sym__tight_short_pair] = "_tight_short_pair",
  [sym__band] = "_band",
  [sym__range] = "_range",
  [sym__list] = "_list",
  [sym__date] = "_date",
  [sym__poles] = "_poles",
  [sym__unit] = "_unit",
  [sym__volts] = "_volts",
  [sym__kilovolts] = "_kilovolts",
  [sym__phases] = "_phases",
  [sym__sets] = "_sets",
  [sym__trade_unit] = "_trade_unit",
  [sym__area] = "_area",
  [sym__square_mm] = "_square_mm",
  [sym_name] = "name",
  [sym_legs] = "legs",
  [sym_mark] = "mark",
  [sym_statement] = "statement",
  [sym_kind] = "kind",
  [sym_key] = "key",
  [sym_flag] = "flag",
  [sym_action] = "action",
  [sym_link] = "link",
  [sym__other] = "_other",
  [sym_model] = "model",
  [sym_voltage] = "voltage",
  [sym_conductor] = "conductor",
  [sym_quantity] = "quantity",
  [sym_count] = "count",
  [sym_other] = "other",
  [aux_sym_model_repeat1] = "model_repeat1",
};

static const TSSymbol ts_symbol_map[] = {
  [ts_builtin_sym_end] = ts_builtin_sym_end,
  [sym_doc] = sym_doc,
  [sym_comment] = sym_comment,
  [sym_port] = sym_port,
  [sym_text] = sym_text,
  [sym__number] = sym__number,
  [sym__fraction] = sym__fraction,
  [sym__tight_quantity] = sym__tight_quantity,
  [sym__tight_volts] = sym__tight_volts,
  [sym__tight_sets] = sym__tight_sets,
  [sym__tight_trade_size] = sym__tight_trade_size,
  [sym__tight_size] = sym__tight_size,
  [sym__tight_dc] = sym__tight_dc,
  [sym__gauge] = sym__gauge,
  [sym__tight_run] = sym__tight_run,
  [sym__run_of] = sym__run_of,
  [sym__cable_of] = sym__cable_of,
  [sym__pair] = sym__pair,
  [sym__short_pair] = sym__short_pair,
  [sym__tight_short_pair] = sym__tight_short_pair,
  [sym__band] = sym__band,
  [sym__range] = sym__range,
  [sym__list] = sym__list,
  [sym__date] = sym__date,
  [sym__poles] = sym__poles,
  [sym__unit] = sym__unit,
  [sym__volts] = sym__volts,
  [sym__kilovolts] = sym__kilovolts,
  [sym__phases] = sym__phases,
  [sym__sets] = sym__sets,
  [sym__trade_unit] = sym__trade_unit,
  [sym__area] = sym__area,
  [sym__square_mm] = sym__square_mm,
  [sym_name] = sym_name,
  [sym_legs] = sym_legs,
  [sym_mark] = sym_mark,
  [sym_statement] = sym_statement,
  [sym_kind] = sym_kind,
  [sym_key] = sym_key,
  [sym_flag] = sym_flag,
  [sym_action] = sym_action,
  [sym_link] = sym_link,
  [sym__other] = sym__other,
  [sym_model] = sym_model,
  [sym_voltage] = sym_voltage,
  [sym_conductor] = sym_conductor,
  [sym_quantity] = sym_quantity,
  [sym_count] = sym_count,
  [sym_other] = sym_other,
  [aux_sym_model_repeat1] = aux_sym_model_repeat1,
};

static const TSSymbolMetadata ts_symbol_metadata[] = {
  [ts_builtin_sym_end] = {
    .visible = false,
    .named = true,
  },
  [sym_doc] = {
    .visible = true,
    .named = true,
  },
  [sym_comment] = {
    .visible = true,
    .named = true,
  },
  [sym_port] = {
    .visible = true,
    .named = true,
  },
  [sym_text] = {
    .visible = true,
    .named = true,
  },
  [sym__number] = {
    .visible = false,
    .named = true,
  },
  [sym__fraction] = {
    .visible = false,
    .named = true,
  },
  [sym__tight_quantity] = {
    .visible = false,
    .named = true,
  },
  [sym__tight_volts] = {
    .visible = false,
    .named = true,
  },
  [sym__tight_sets] = {
    .visible = false,
    .named = true,
  },
  [sym__tight_trade_size] = {
    .visible = false,
    .named = true,
  },
  [sym__tight_size] = {
    .visible = false,
    .named = true,
  },
  [sym__tight_dc] = {
    .visible = false,
    .named = true,
  },
  [sym__gauge] = {
    .visible = false,
    .named = true,
  },
  [sym__tight_run] = {
    .visible = false,
    .named = true,
  },
  [sym__run_of] = {
    .visible = false,
    .named = true,
  },
  [sym__cable_of] = {
    .visible = false,
    .named = true,
  },
  [sym__pair] = {
    .visible = false,
    .named = true,
  },
  [sym__short_pair] = {
    .visible = false,
    .named = true,
  },
  [sym__tight_short_pair] = {
    .visible = false,
    .named = true,
  },
  [sym__band] = {
    .visible = false,
    .named = true,
  },
  [sym__range] = {
    .visible = false,
    .named = true,
  },
  [sym__list] = {
    .visible = false,
    .named = true,
  },
  [sym__date] = {
    .visible = false,
    .named = true,
  },
  [sym__poles] = {
    .visible = false,
    .named = true,
  },
  [sym__unit] = {
    .visible = false,
    .named = true,
  },
  [sym__volts] = {
    .visible = false,
    .named = true,
  },
  [sym__kilovolts] = {
    .visible = false,
    .named = true,
  },
  [sym__phases] = {
    .visible = false,
    .named = true,
  },
  [sym__sets] = {
    .visible = false,
    .named = true,
  },
  [sym__trade_unit] = {
    .visible = false,
    .named = true,
  },
  [sym__area] = {
    .visible = false,
    .named = true,
  },
  [sym__square_mm] = {
    .visible = false,
    .named = true,
  },
  [sym_name] = {
    .visible = true,
    .named = true,
  },
  [sym_legs] = {
    .visible = true,
    .named = true,
  },
  [sym_mark] = {
    .visible = true,
    .named = true,
  },
  [sym_statement] = {
    .visible = true,
    .named = true,
  },
  [sym_kind] = {
    .visible = true,
    .named = true,
  },
  [sym_key] = {
    .visible = true,
    .named = true,
  },
  [sym_flag] = {
    .visible = true,
    .named = true,
  },
  [sym_action] = {
    .visible = true,
    .named = true,
  },
  [sym_link] = {
    .visible = true,
    .named = true,
  },
  [sym__other] = {
    .visible = false,
    .named = true,
  },
  [sym_model] = {
    .visible = true,
    .named = true,
  },
  [sym_voltage] = {
    .visible = true,
    .named = true,
  },
  [sym_conductor] = {
    .visible = true,
    .named = true,
  },
  [sym_quantity] = {
    .visible = true,
    .named = true,
  },
  [sym_count] = {
    .visible = true,
    .named = true,
  },
  [sym_other] = {
    .visible = true,
    .named = true,
  },
  [aux_sym_model_repeat1] = {
    .visible = false,
    .named = false,
  },
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
  [3] = 3,
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
  [23] = 23,
  [24] = 24,
  [25] = 25,
  [26] = 26,
};

static TSCharacterRange sym_port_character_set_3[] = {
  {'0', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xc0, 0xd6}, {0xd8, 0xf6}, {0xf8, 0x1fff}, {0x2c00, 0x2fff},
  {0x3040, 0xfdff},
};

static TSCharacterRange sym__other_character_set_2[] = {
  {0, 0x08}, {0x0b, '\f'}, {0x0e, 0x1f}, {'!', '!'}, {'#', '*'}, {'.', '.'}, {'0', '9'}, {';', ';'},
  {'?', 'Z'}, {'\\', '\\'}, {'^', 0x9f}, {0xa1, 0x2191}, {0x2193, 0x2263}, {0x2266, 0x10ffff},
};

static TSCharacterRange sym__other_character_set_3[] = {
  {0, 0x08}, {0x0b, '\f'}, {0x0e, 0x1f}, {'!', '!'}, {'#', '*'}, {'-', '9'}, {';', ';'}, {'?', 'Z'},
  {'\\', '\\'}, {'^', 0x9f}, {0xa1, 0x2191}, {0x2193, 0x2263}, {0x2266, 0x10ffff},
};

static bool ts_lex(TSLexer *lexer, TSStateId state) {
  START_LEXER();
  eof = lexer->eof(lexer);
  switch (state) {
    case 0:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(98);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '1') ADVANCE(126);
      if (lookahead == '3') ADVANCE(126);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == 'V') ADVANCE(254);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(356);
      if (lookahead == 'd') ADVANCE(414);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(342);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(494);
      if (lookahead == 'i') ADVANCE(719);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(335);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(343);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(564);
      if (lookahead == 'p') ADVANCE(360);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(423);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(770);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xfeff) ADVANCE(318);
      if (('2' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(0);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 1:
      if (lookahead == '\n') SKIP(2);
      END_STATE();
    case 2:
      if (lookahead == '\r') SKIP(1);
      if (lookahead == '1') ADVANCE(61);
      if (lookahead == '3') ADVANCE(61);
      if (lookahead == 'd') ADVANCE(27);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0 ||
          lookahead == 0xfeff) SKIP(2);
      END_STATE();
    case 3:
      if (lookahead == '"') ADVANCE(125);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(3);
      END_STATE();
    case 4:
      if (lookahead == '.') ADVANCE(52);
      if (lookahead == 0xb7) ADVANCE(52);
      END_STATE();
    case 5:
      if (lookahead == '/') ADVANCE(18);
      END_STATE();
    case 6:
      if (lookahead == '0') ADVANCE(185);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 7:
      if (lookahead == '0') ADVANCE(189);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 8:
      ADVANCE_MAP(
        '1', 204,
        '3', 200,
        '6', 202,
        '2', 139,
        '4', 139,
        '8', 139,
        '0', 206,
        '5', 206,
        '7', 206,
        '9', 206,
      );
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 9:
      if (lookahead == '1') ADVANCE(1022);
      if (lookahead == '3') ADVANCE(1020);
      if (lookahead == '6') ADVANCE(1021);
      if (('2' <= lookahead && lookahead <= '4') ||
          lookahead == '8') ADVANCE(142);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 10:
      ADVANCE_MAP(
        '1', 205,
        '3', 201,
        '6', 203,
        '2', 140,
        '4', 140,
        '8', 140,
        '0', 207,
        '5', 207,
        '7', 207,
        '9', 207,
      );
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 11:
      if (lookahead == 'A') ADVANCE(143);
      END_STATE();
    case 12:
      if (lookahead == 'L') ADVANCE(82);
      if (lookahead == ']') ADVANCE(284);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) ADVANCE(12);
      if (('A' <= lookahead && lookahead <= 'C') ||
          lookahead == 'N') ADVANCE(12);
      END_STATE();
    case 13:
      if (lookahead == 'L') ADVANCE(82);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) ADVANCE(13);
      if (('A' <= lookahead && lookahead <= 'C') ||
          lookahead == 'N') ADVANCE(12);
      END_STATE();
    case 14:
      if (lookahead == 'N') ADVANCE(230);
      END_STATE();
    case 15:
      if (lookahead == 'V') ADVANCE(174);
      if (lookahead == 'W') ADVANCE(163);
      if (lookahead == 'v') ADVANCE(21);
      if (lookahead == 'A' ||
          lookahead == 'm') ADVANCE(143);
      END_STATE();
    case 16:
      if (lookahead == 'V') ADVANCE(11);
      if (lookahead == 'W') ADVANCE(163);
      if (lookahead == 'v') ADVANCE(21);
      END_STATE();
    case 17:
      if (lookahead == 'W') ADVANCE(170);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 18:
      if (lookahead == 'W') ADVANCE(143);
      END_STATE();
    case 19:
      if (lookahead == 'W') ADVANCE(227);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 20:
      if (lookahead == 'W') ADVANCE(252);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 21:
      if (lookahead == 'a') ADVANCE(64);
      END_STATE();
    case 22:
      if (lookahead == 'a') ADVANCE(817);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 23:
      if (lookahead == 'a') ADVANCE(848);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 24:
      if (lookahead == 'b') ADVANCE(977);
      if (lookahead == 'o') ADVANCE(969);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 25:
      if (lookahead == 'b') ADVANCE(862);
      if (lookahead == 'p') ADVANCE(379);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 26:
      if (lookahead == 'c') ADVANCE(44);
      END_STATE();
    case 27:
      if (lookahead == 'c') ADVANCE(256);
      END_STATE();
    case 28:
      if (lookahead == 'd') ADVANCE(461);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 29:
      if (lookahead == 'e') ADVANCE(70);
      END_STATE();
    case 30:
      if (lookahead == 'e') ADVANCE(818);
      if (lookahead == 'f') ADVANCE(370);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 31:
      if (lookahead == 'f') ADVANCE(71);
      if (lookahead == 'm') ADVANCE(143);
      END_STATE();
    case 32:
      if (lookahead == 'f') ADVANCE(769);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 33:
      if (lookahead == 'g') ADVANCE(81);
      END_STATE();
    case 34:
      if (lookahead == 'g') ADVANCE(845);
      if (lookahead == 'p') ADVANCE(592);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 35:
      if (lookahead == 'h') ADVANCE(256);
      END_STATE();
    case 36:
      if (lookahead == 'h') ADVANCE(50);
      END_STATE();
    case 37:
      if (lookahead == 'h') ADVANCE(55);
      END_STATE();
    case 38:
      if (lookahead == 'h') ADVANCE(383);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 39:
      if (lookahead == 'i') ADVANCE(480);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 40:
      if (lookahead == 'k') ADVANCE(1045);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 41:
      if (lookahead == 'k') ADVANCE(31);
      END_STATE();
    case 42:
      if (lookahead == 'k') ADVANCE(1046);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 43:
      if (lookahead == 'k') ADVANCE(1047);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 44:
      if (lookahead == 'l') ADVANCE(29);
      END_STATE();
    case 45:
      if (lookahead == 'l') ADVANCE(569);
      if (lookahead == 'm') ADVANCE(606);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 46:
      if (lookahead == 'l') ADVANCE(946);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 47:
      if (lookahead == 'l') ADVANCE(538);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 48:
      if (lookahead == 'l') ADVANCE(618);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 49:
      if (lookahead == 'm') ADVANCE(170);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 50:
      if (lookahead == 'm') ADVANCE(158);
      END_STATE();
    case 51:
      if (lookahead == 'm') ADVANCE(143);
      END_STATE();
    case 52:
      if (lookahead == 'm') ADVANCE(5);
      END_STATE();
    case 53:
      if (lookahead == 'm') ADVANCE(227);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 54:
      if (lookahead == 'm') ADVANCE(252);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 55:
      if (lookahead == 'm') ADVANCE(159);
      END_STATE();
    case 56:
      if (lookahead == 'm') ADVANCE(797);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 57:
      if (lookahead == 'n') ADVANCE(143);
      END_STATE();
    case 58:
      if (lookahead == 'n') ADVANCE(530);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 59:
      if (lookahead == 'o') ADVANCE(562);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 60:
      if (lookahead == 'o') ADVANCE(811);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 61:
      if (lookahead == 'p') ADVANCE(35);
      END_STATE();
    case 62:
      if (lookahead == 'p') ADVANCE(942);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 63:
      if (lookahead == 'p') ADVANCE(598);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 64:
      if (lookahead == 'r') ADVANCE(143);
      END_STATE();
    case 65:
      if (lookahead == 'r') ADVANCE(302);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 66:
      if (lookahead == 'r') ADVANCE(492);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 67:
      if (lookahead == 'r') ADVANCE(542);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 68:
      if (lookahead == 'r') ADVANCE(544);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 69:
      if (lookahead == 'r') ADVANCE(380);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 70:
      if (lookahead == 's') ADVANCE(143);
      END_STATE();
    case 71:
      if (lookahead == 't') ADVANCE(143);
      END_STATE();
    case 72:
      if (lookahead == 't') ADVANCE(171);
      END_STATE();
    case 73:
      if (lookahead == 't') ADVANCE(983);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 74:
      if (lookahead == 't') ADVANCE(545);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 75:
      if (lookahead == 'u') ADVANCE(143);
      END_STATE();
    case 76:
      if (lookahead == 'w') ADVANCE(631);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 77:
      if (lookahead == 'w') ADVANCE(630);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 78:
      if (lookahead == 'x') ADVANCE(302);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 79:
      if (lookahead == 'y') ADVANCE(26);
      END_STATE();
    case 80:
      if (lookahead == 'z') ADVANCE(143);
      END_STATE();
    case 81:
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(143);
      END_STATE();
    case 82:
      if (('1' <= lookahead && lookahead <= '3')) ADVANCE(12);
      END_STATE();
    case 83:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(228);
      END_STATE();
    case 84:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(214);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 85:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(206);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 86:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(137);
      END_STATE();
    case 87:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(196);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 88:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(989);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 89:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(207);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 90:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(213);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 91:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(215);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 92:
      if (('a' <= lookahead && lookahead <= 'z')) ADVANCE(124);
      END_STATE();
    case 93:
      if (('0' <= lookahead && lookahead <= '9') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(121);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 94:
      if (('0' <= lookahead && lookahead <= '9') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(124);
      END_STATE();
    case 95:
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 96:
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 97:
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 98:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(0);
      END_STATE();
    case 99:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(108);
      END_STATE();
    case 100:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(109);
      END_STATE();
    case 101:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(110);
      END_STATE();
    case 102:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(111);
      END_STATE();
    case 103:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(113);
      END_STATE();
    case 104:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(114);
      END_STATE();
    case 105:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(112);
      END_STATE();
    case 106:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(115);
      END_STATE();
    case 107:
      if (eof) ADVANCE(117);
      if (lookahead == '\n') SKIP(116);
      END_STATE();
    case 108:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(99);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(356);
      if (lookahead == 'd') ADVANCE(482);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(342);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(494);
      if (lookahead == 'i') ADVANCE(725);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(566);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(346);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(564);
      if (lookahead == 'p') ADVANCE(360);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(424);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(770);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xfeff) ADVANCE(322);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(108);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 109:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(100);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '%') ADVANCE(252);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '1') ADVANCE(126);
      if (lookahead == '3') ADVANCE(126);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == 'A') ADVANCE(235);
      if (lookahead == 'H') ADVANCE(278);
      if (lookahead == 'K') ADVANCE(283);
      if (lookahead == 'M') ADVANCE(270);
      if (lookahead == 'V') ADVANCE(253);
      if (lookahead == 'W') ADVANCE(236);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(355);
      if (lookahead == 'd') ADVANCE(243);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(341);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(247);
      if (lookahead == 'i') ADVANCE(719);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(333);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(240);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(563);
      if (lookahead == 'p') ADVANCE(359);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(244);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(385);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xb0) ADVANCE(1091);
      if (lookahead == 0x3a9) ADVANCE(238);
      if (lookahead == 0x2126) ADVANCE(234);
      if (lookahead == 0xfeff) ADVANCE(315);
      if (('2' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(109);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 110:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(101);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '%') ADVANCE(252);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == 'A') ADVANCE(235);
      if (lookahead == 'H') ADVANCE(278);
      if (lookahead == 'K') ADVANCE(283);
      if (lookahead == 'M') ADVANCE(270);
      if (lookahead == 'V') ADVANCE(253);
      if (lookahead == 'W') ADVANCE(236);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(355);
      if (lookahead == 'd') ADVANCE(246);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(341);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(247);
      if (lookahead == 'i') ADVANCE(719);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(334);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(241);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(563);
      if (lookahead == 'p') ADVANCE(359);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(245);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(385);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xb0) ADVANCE(1091);
      if (lookahead == 0x3a9) ADVANCE(238);
      if (lookahead == 0x2126) ADVANCE(234);
      if (lookahead == 0xfeff) ADVANCE(316);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(110);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 111:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(102);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '1') ADVANCE(126);
      if (lookahead == '3') ADVANCE(126);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == 'V') ADVANCE(254);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(356);
      if (lookahead == 'd') ADVANCE(414);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(342);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(494);
      if (lookahead == 'i') ADVANCE(725);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(336);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(346);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(564);
      if (lookahead == 'p') ADVANCE(360);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(424);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(770);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xfeff) ADVANCE(319);
      if (('2' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(111);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 112:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(105);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '%') ADVANCE(252);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == 'A') ADVANCE(235);
      if (lookahead == 'H') ADVANCE(278);
      if (lookahead == 'K') ADVANCE(283);
      if (lookahead == 'M') ADVANCE(270);
      if (lookahead == 'V') ADVANCE(253);
      if (lookahead == 'W') ADVANCE(236);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(355);
      if (lookahead == 'd') ADVANCE(246);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(341);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(247);
      if (lookahead == 'i') ADVANCE(725);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(334);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(242);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(563);
      if (lookahead == 'p') ADVANCE(359);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(245);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(385);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xb0) ADVANCE(1091);
      if (lookahead == 0x3a9) ADVANCE(238);
      if (lookahead == 0x2126) ADVANCE(234);
      if (lookahead == 0xfeff) ADVANCE(317);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(112);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 113:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(103);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '1') ADVANCE(126);
      if (lookahead == '3') ADVANCE(126);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(356);
      if (lookahead == 'd') ADVANCE(414);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(342);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(494);
      if (lookahead == 'i') ADVANCE(725);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(566);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(346);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(564);
      if (lookahead == 'p') ADVANCE(360);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(424);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(770);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xfeff) ADVANCE(320);
      if (('2' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(113);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 114:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(104);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(356);
      if (lookahead == 'd') ADVANCE(482);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(342);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(494);
      if (lookahead == 'i') ADVANCE(725);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(338);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(346);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(564);
      if (lookahead == 'p') ADVANCE(360);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(424);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(770);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xfeff) ADVANCE(324);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(114);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 115:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(106);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(356);
      if (lookahead == 'd') ADVANCE(482);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(342);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(494);
      if (lookahead == 'i') ADVANCE(725);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(416);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(344);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(564);
      if (lookahead == 'p') ADVANCE(360);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(424);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(770);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xfeff) ADVANCE(321);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(115);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 116:
      if (eof) ADVANCE(117);
      if (lookahead == '\r') SKIP(107);
      if (lookahead == '"') ADVANCE(325);
      if (lookahead == '#') ADVANCE(1092);
      if (lookahead == '+') ADVANCE(286);
      if (lookahead == '-') ADVANCE(1024);
      if (lookahead == '/') ADVANCE(1019);
      if (lookahead == '<') ADVANCE(1023);
      if (lookahead == '>') ADVANCE(1023);
      if (lookahead == '[') ADVANCE(1027);
      if (lookahead == 'a') ADVANCE(560);
      if (lookahead == 'b') ADVANCE(339);
      if (lookahead == 'c') ADVANCE(356);
      if (lookahead == 'd') ADVANCE(482);
      if (lookahead == 'e') ADVANCE(357);
      if (lookahead == 'f') ADVANCE(342);
      if (lookahead == 'g') ADVANCE(493);
      if (lookahead == 'h') ADVANCE(494);
      if (lookahead == 'i') ADVANCE(725);
      if (lookahead == 'j') ADVANCE(953);
      if (lookahead == 'k') ADVANCE(566);
      if (lookahead == 'l') ADVANCE(387);
      if (lookahead == 'm') ADVANCE(345);
      if (lookahead == 'n') ADVANCE(484);
      if (lookahead == 'o') ADVANCE(564);
      if (lookahead == 'p') ADVANCE(360);
      if (lookahead == 'r') ADVANCE(991);
      if (lookahead == 's') ADVANCE(424);
      if (lookahead == 't') ADVANCE(361);
      if (lookahead == 'u') ADVANCE(755);
      if (lookahead == 'v') ADVANCE(770);
      if (lookahead == 'w') ADVANCE(498);
      if (lookahead == 'x') ADVANCE(992);
      if (lookahead == 'z') ADVANCE(289);
      if (lookahead == 0xfeff) ADVANCE(323);
      if (lookahead == '=' ||
          lookahead == ']') ADVANCE(314);
      if (lookahead == '_' ||
          ('q' <= lookahead && lookahead <= 'y')) ADVANCE(990);
      if (lookahead == ':' ||
          lookahead == 0x2192 ||
          lookahead == 0x2264 ||
          lookahead == 0x2265) ADVANCE(285);
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (lookahead == '\t' ||
          lookahead == '\n' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) SKIP(116);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if (lookahead != 0) ADVANCE(1106);
      END_STATE();
    case 117:
      ACCEPT_TOKEN(ts_builtin_sym_end);
      END_STATE();
    case 118:
      ACCEPT_TOKEN(sym_doc);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(118);
      END_STATE();
    case 119:
      ACCEPT_TOKEN(sym_comment);
      if (lookahead == '/') ADVANCE(118);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(120);
      END_STATE();
    case 120:
      ACCEPT_TOKEN(sym_comment);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(120);
      END_STATE();
    case 121:
      ACCEPT_TOKEN(sym_port);
      if (lookahead == '-') ADVANCE(93);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(121);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 122:
      ACCEPT_TOKEN(sym_port);
      if (lookahead == '-') ADVANCE(93);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(17);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(121);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 123:
      ACCEPT_TOKEN(sym_port);
      if (lookahead == '-') ADVANCE(93);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(20);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(121);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 124:
      ACCEPT_TOKEN(sym_port);
      if (lookahead == '-') ADVANCE(94);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(124);
      END_STATE();
    case 125:
      ACCEPT_TOKEN(sym_text);
      if (lookahead == '.') ADVANCE(92);
      END_STATE();
    case 126:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '#', 1093,
        '%', 170,
        ',', 83,
        '-', 84,
        '.', 1015,
        '/', 8,
        'A', 146,
        'G', 279,
        'H', 277,
        'K', 282,
        'M', 269,
        'V', 172,
        'W', 147,
        'Y', 281,
        'c', 980,
        'd', 152,
        'f', 893,
        'h', 154,
        'i', 726,
        'k', 332,
        'm', 151,
        'o', 589,
        'p', 231,
        's', 153,
        'v', 362,
        'x', 988,
        0xb0, 1089,
        0xd7, 1094,
        0x3a9, 148,
        0x2126, 144,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(130);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 127:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '#', 1093,
        '%', 170,
        ',', 83,
        '-', 84,
        '.', 1015,
        '/', 8,
        'A', 146,
        'G', 279,
        'H', 277,
        'K', 282,
        'M', 269,
        'V', 172,
        'W', 147,
        'Y', 281,
        'c', 980,
        'd', 152,
        'f', 893,
        'h', 154,
        'i', 726,
        'k', 332,
        'm', 151,
        'o', 589,
        'p', 232,
        's', 153,
        'v', 362,
        'x', 988,
        0xb0, 1089,
        0xd7, 1094,
        0x3a9, 148,
        0x2126, 144,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(130);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 128:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '#', 1093,
        '%', 170,
        ',', 83,
        '-', 84,
        '.', 1015,
        '/', 8,
        'A', 146,
        'G', 279,
        'H', 277,
        'K', 282,
        'M', 269,
        'V', 172,
        'W', 147,
        'Y', 281,
        'c', 980,
        'd', 152,
        'f', 893,
        'h', 154,
        'i', 726,
        'k', 332,
        'm', 151,
        'o', 589,
        'p', 939,
        's', 153,
        'v', 362,
        'x', 988,
        0xb0, 1089,
        0xd7, 1094,
        0x3a9, 148,
        0x2126, 144,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(130);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 129:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '#', 1093,
        '%', 170,
        ',', 83,
        '-', 84,
        '.', 1016,
        '/', 10,
        'A', 146,
        'G', 279,
        'H', 277,
        'K', 282,
        'M', 269,
        'V', 172,
        'W', 147,
        'Y', 281,
        'c', 980,
        'd', 152,
        'f', 893,
        'h', 154,
        'i', 726,
        'k', 332,
        'm', 151,
        'o', 589,
        'p', 939,
        's', 153,
        'v', 362,
        'x', 988,
        0xb0, 1089,
        0xd7, 1094,
        0x3a9, 148,
        0x2126, 144,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(132);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 130:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '#', 1093,
        '%', 170,
        ',', 83,
        '-', 84,
        '.', 1016,
        '/', 10,
        'A', 146,
        'G', 279,
        'H', 277,
        'K', 282,
        'M', 269,
        'V', 172,
        'W', 147,
        'Y', 281,
        'c', 980,
        'd', 152,
        'f', 893,
        'h', 154,
        'i', 726,
        'k', 332,
        'm', 151,
        'o', 589,
        'p', 939,
        's', 153,
        'v', 362,
        'x', 988,
        0xb0, 1089,
        0xd7, 1094,
        0x3a9, 148,
        0x2126, 144,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(129);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 131:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '#', 1093,
        '%', 170,
        ',', 83,
        '-', 84,
        '.', 1016,
        '/', 10,
        'A', 146,
        'G', 279,
        'H', 277,
        'K', 282,
        'M', 269,
        'V', 172,
        'W', 147,
        'Y', 281,
        'c', 980,
        'd', 152,
        'f', 893,
        'h', 154,
        'i', 726,
        'k', 332,
        'm', 151,
        'o', 589,
        'p', 939,
        's', 153,
        'v', 362,
        'x', 988,
        0xb0, 1089,
        0xd7, 1094,
        0x3a9, 148,
        0x2126, 144,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(131);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 132:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '#', 1093,
        '%', 170,
        ',', 83,
        '-', 91,
        '.', 1016,
        '/', 10,
        'A', 146,
        'G', 279,
        'H', 277,
        'K', 282,
        'M', 269,
        'V', 172,
        'W', 147,
        'Y', 281,
        'c', 980,
        'd', 152,
        'f', 893,
        'h', 154,
        'i', 726,
        'k', 332,
        'm', 151,
        'o', 589,
        'p', 939,
        's', 153,
        'v', 362,
        'x', 988,
        0xb0, 1089,
        0xd7, 1094,
        0x3a9, 148,
        0x2126, 144,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(131);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 133:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '%', 170,
        '-', 90,
        '.', 1017,
        '/', 85,
        'A', 146,
        'H', 277,
        'K', 282,
        'M', 269,
        'V', 172,
        'W', 147,
        'Y', 281,
        'c', 980,
        'd', 152,
        'f', 893,
        'h', 154,
        'i', 726,
        'k', 332,
        'm', 151,
        'o', 589,
        'p', 939,
        's', 155,
        'v', 362,
        0xb0, 1089,
        0x3a9, 148,
        0x2126, 144,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(133);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 134:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '%', 170,
        '-', 90,
        '.', 1017,
        '/', 89,
        'A', 146,
        'H', 277,
        'K', 282,
        'M', 269,
        'V', 172,
        'W', 147,
        'Y', 281,
        'c', 980,
        'd', 152,
        'f', 893,
        'h', 154,
        'i', 726,
        'k', 332,
        'm', 151,
        'o', 589,
        'p', 939,
        's', 155,
        'v', 362,
        0xb0, 1089,
        0x3a9, 148,
        0x2126, 144,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(134);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 135:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '.', 86,
        'A', 163,
        'H', 80,
        'K', 4,
        'M', 16,
        'V', 174,
        'c', 79,
        'd', 160,
        'f', 72,
        'h', 168,
        'k', 15,
        'm', 164,
        'o', 36,
        'p', 75,
        'v', 21,
        0xb0, 81,
        0x3a9, 158,
        0x2126, 158,
        '%', 143,
        'W', 143,
        's', 143,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(135);
      END_STATE();
    case 136:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        '.', 1095,
        'A', 162,
        'H', 1086,
        'K', 1014,
        'M', 1030,
        'V', 173,
        'c', 1084,
        'd', 161,
        'f', 1078,
        'h', 167,
        'k', 1028,
        'm', 166,
        'o', 1051,
        'p', 1082,
        'v', 1037,
        0xb0, 1089,
        0x3a9, 144,
        0x2126, 144,
        '-', 97,
        '/', 97,
        '%', 170,
        'W', 170,
        's', 170,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(136);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 137:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        'A', 163,
        'H', 80,
        'K', 4,
        'M', 16,
        'V', 174,
        'c', 79,
        'd', 160,
        'f', 72,
        'h', 168,
        'k', 15,
        'm', 164,
        'o', 36,
        'p', 75,
        'v', 21,
        0xb0, 81,
        0x3a9, 158,
        0x2126, 158,
        '%', 143,
        'W', 143,
        's', 143,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(137);
      END_STATE();
    case 138:
      ACCEPT_TOKEN(sym__number);
      ADVANCE_MAP(
        'A', 162,
        'H', 1086,
        'K', 1014,
        'M', 1030,
        'V', 173,
        'c', 1084,
        'd', 161,
        'f', 1078,
        'h', 167,
        'k', 1028,
        'm', 166,
        'o', 1051,
        'p', 1082,
        'v', 1037,
        0xb0, 1089,
        0x3a9, 144,
        0x2126, 144,
        '-', 97,
        '/', 97,
        '%', 170,
        'W', 170,
        's', 170,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(138);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 139:
      ACCEPT_TOKEN(sym__fraction);
      ADVANCE_MAP(
        '.', 1097,
        'A', 162,
        'H', 1086,
        'K', 1014,
        'M', 1030,
        'V', 1025,
        'c', 1084,
        'd', 161,
        'f', 1078,
        'h', 167,
        'i', 1072,
        'k', 1033,
        'm', 165,
        'o', 1051,
        'p', 1082,
        'v', 1037,
        0xb0, 1089,
        0x3a9, 144,
        0x2126, 144,
        '-', 97,
        '/', 97,
        '%', 170,
        'W', 170,
        's', 170,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(206);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 140:
      ACCEPT_TOKEN(sym__fraction);
      ADVANCE_MAP(
        '.', 1097,
        'A', 162,
        'H', 1086,
        'K', 1014,
        'M', 1030,
        'V', 1025,
        'c', 1084,
        'd', 161,
        'f', 1078,
        'h', 167,
        'i', 1072,
        'k', 1033,
        'm', 165,
        'o', 1051,
        'p', 1082,
        'v', 1037,
        0xb0, 1089,
        0x3a9, 144,
        0x2126, 144,
        '-', 97,
        '/', 97,
        '%', 170,
        'W', 170,
        's', 170,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(196);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 141:
      ACCEPT_TOKEN(sym__fraction);
      ADVANCE_MAP(
        '.', 1100,
        'A', 162,
        'H', 1086,
        'K', 1014,
        'M', 1030,
        'V', 197,
        'c', 1084,
        'd', 161,
        'f', 1078,
        'h', 167,
        'i', 1072,
        'k', 1035,
        'm', 165,
        'o', 1051,
        'p', 1082,
        'v', 1037,
        0xb0, 1089,
        0x3a9, 144,
        0x2126, 144,
        '-', 97,
        '/', 97,
        '%', 170,
        'W', 170,
        's', 170,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(196);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 142:
      ACCEPT_TOKEN(sym__fraction);
      ADVANCE_MAP(
        'A', 162,
        'H', 1086,
        'K', 1014,
        'M', 1030,
        'V', 1025,
        'c', 1084,
        'd', 161,
        'f', 1078,
        'h', 167,
        'i', 1072,
        'k', 1029,
        'm', 165,
        'o', 1051,
        'p', 1082,
        'v', 1037,
        0xb0, 1089,
        0x3a9, 144,
        0x2126, 144,
        '-', 97,
        '/', 97,
        '%', 170,
        'W', 170,
        's', 170,
      );
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 143:
      ACCEPT_TOKEN(sym__tight_quantity);
      END_STATE();
    case 144:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(40);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 145:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(49);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 146:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(147);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 147:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 148:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(40);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 149:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(49);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 150:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == '2') ADVANCE(155);
      if (lookahead == 0xb2) ADVANCE(170);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 151:
      ACCEPT_TOKEN(sym__tight_quantity);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'A', 147,
        'i', 722,
        'm', 177,
        'o', 590,
        0xb2, 170,
        0x3a9, 149,
        0x2126, 145,
        '2', 155,
        's', 155,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 152:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(183);
      if (lookahead == 'e') ADVANCE(570);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 153:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(896);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 154:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(155);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 155:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 156:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(40);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 157:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(49);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 158:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '/') ADVANCE(41);
      END_STATE();
    case 159:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '/') ADVANCE(51);
      END_STATE();
    case 160:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == 'e') ADVANCE(33);
      END_STATE();
    case 161:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == 'e') ADVANCE(1048);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 162:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == 'h') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 163:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == 'h') ADVANCE(143);
      END_STATE();
    case 164:
      ACCEPT_TOKEN(sym__tight_quantity);
      ADVANCE_MAP(
        'i', 57,
        'o', 37,
        0x3a9, 159,
        0x2126, 159,
        '2', 143,
        'A', 143,
        's', 143,
        0xb2, 143,
      );
      END_STATE();
    case 165:
      ACCEPT_TOKEN(sym__tight_quantity);
      ADVANCE_MAP(
        'i', 1070,
        'm', 179,
        'o', 1052,
        0x3a9, 145,
        0x2126, 145,
        '-', 97,
        '/', 97,
        '2', 170,
        'A', 170,
        's', 170,
        0xb2, 170,
      );
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 166:
      ACCEPT_TOKEN(sym__tight_quantity);
      ADVANCE_MAP(
        'i', 1070,
        'o', 1052,
        0x3a9, 145,
        0x2126, 145,
        '-', 97,
        '/', 97,
        '2', 170,
        'A', 170,
        's', 170,
        0xb2, 170,
      );
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 167:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == 'p') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 168:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == 'p') ADVANCE(143);
      END_STATE();
    case 169:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == '2' ||
          lookahead == 0xb2) ADVANCE(170);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 170:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 171:
      ACCEPT_TOKEN(sym__tight_quantity);
      if (lookahead == '2' ||
          lookahead == 0xb2) ADVANCE(143);
      END_STATE();
    case 172:
      ACCEPT_TOKEN(sym__tight_volts);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'A') ADVANCE(147);
      if (lookahead == 'd') ADVANCE(273);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 173:
      ACCEPT_TOKEN(sym__tight_volts);
      if (lookahead == 'A') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 174:
      ACCEPT_TOKEN(sym__tight_volts);
      if (lookahead == 'A') ADVANCE(143);
      END_STATE();
    case 175:
      ACCEPT_TOKEN(sym__tight_sets);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(176);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 176:
      ACCEPT_TOKEN(sym__tight_sets);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 177:
      ACCEPT_TOKEN(sym__tight_trade_size);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == '2') ADVANCE(180);
      if (lookahead == 0xb2) ADVANCE(181);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 178:
      ACCEPT_TOKEN(sym__tight_trade_size);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 179:
      ACCEPT_TOKEN(sym__tight_trade_size);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 180:
      ACCEPT_TOKEN(sym__tight_size);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 181:
      ACCEPT_TOKEN(sym__tight_size);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 182:
      ACCEPT_TOKEN(sym__tight_dc);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 183:
      ACCEPT_TOKEN(sym__tight_dc);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 184:
      ACCEPT_TOKEN(sym__gauge);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(6);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(184);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 185:
      ACCEPT_TOKEN(sym__gauge);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 186:
      ACCEPT_TOKEN(sym__tight_run);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(7);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(186);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 187:
      ACCEPT_TOKEN(sym__tight_run);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 188:
      ACCEPT_TOKEN(sym__tight_run);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 189:
      ACCEPT_TOKEN(sym__tight_run);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 190:
      ACCEPT_TOKEN(sym__run_of);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'k') ADVANCE(458);
      if (lookahead == 'm') ADVANCE(695);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(190);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 191:
      ACCEPT_TOKEN(sym__run_of);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1103);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'k') ADVANCE(458);
      if (lookahead == 'm') ADVANCE(695);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(191);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 192:
      ACCEPT_TOKEN(sym__run_of);
      if (lookahead == '.') ADVANCE(1098);
      if (lookahead == 'k') ADVANCE(1041);
      if (lookahead == 'm') ADVANCE(1062);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(192);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 193:
      ACCEPT_TOKEN(sym__run_of);
      if (lookahead == 'k') ADVANCE(1041);
      if (lookahead == 'm') ADVANCE(1062);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(193);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 194:
      ACCEPT_TOKEN(sym__cable_of);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(274);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(194);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 195:
      ACCEPT_TOKEN(sym__cable_of);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1102);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(274);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(195);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 196:
      ACCEPT_TOKEN(sym__pair);
      if (lookahead == '.') ADVANCE(1100);
      if (lookahead == 'V') ADVANCE(199);
      if (lookahead == 'k') ADVANCE(1034);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(196);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 197:
      ACCEPT_TOKEN(sym__pair);
      if (lookahead == 'A') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 198:
      ACCEPT_TOKEN(sym__pair);
      if (lookahead == 'V') ADVANCE(199);
      if (lookahead == 'k') ADVANCE(1034);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(198);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 199:
      ACCEPT_TOKEN(sym__pair);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 200:
      ACCEPT_TOKEN(sym__short_pair);
      if (lookahead == '.') ADVANCE(1097);
      if (lookahead == '2') ADVANCE(139);
      if (lookahead == 'k') ADVANCE(1032);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(206);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 201:
      ACCEPT_TOKEN(sym__short_pair);
      if (lookahead == '.') ADVANCE(1097);
      if (lookahead == '2') ADVANCE(141);
      if (lookahead == 'k') ADVANCE(1032);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(196);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 202:
      ACCEPT_TOKEN(sym__short_pair);
      if (lookahead == '.') ADVANCE(1097);
      if (lookahead == '4') ADVANCE(139);
      if (lookahead == 'k') ADVANCE(1032);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(206);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 203:
      ACCEPT_TOKEN(sym__short_pair);
      if (lookahead == '.') ADVANCE(1097);
      if (lookahead == '4') ADVANCE(141);
      if (lookahead == 'k') ADVANCE(1032);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(196);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 204:
      ACCEPT_TOKEN(sym__short_pair);
      if (lookahead == '.') ADVANCE(1097);
      if (lookahead == '6') ADVANCE(139);
      if (lookahead == 'k') ADVANCE(1032);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(206);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 205:
      ACCEPT_TOKEN(sym__short_pair);
      if (lookahead == '.') ADVANCE(1097);
      if (lookahead == '6') ADVANCE(141);
      if (lookahead == 'k') ADVANCE(1032);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(196);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 206:
      ACCEPT_TOKEN(sym__short_pair);
      if (lookahead == '.') ADVANCE(1097);
      if (lookahead == 'k') ADVANCE(1032);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(206);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 207:
      ACCEPT_TOKEN(sym__short_pair);
      if (lookahead == '.') ADVANCE(1097);
      if (lookahead == 'k') ADVANCE(1032);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(196);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 208:
      ACCEPT_TOKEN(sym__short_pair);
      if (lookahead == 'k') ADVANCE(1032);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(208);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 209:
      ACCEPT_TOKEN(sym__tight_short_pair);
      if (lookahead == 'A') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 210:
      ACCEPT_TOKEN(sym__tight_short_pair);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 211:
      ACCEPT_TOKEN(sym__band);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(273);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 212:
      ACCEPT_TOKEN(sym__band);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'V') ADVANCE(211);
      if (lookahead == 'd') ADVANCE(418);
      if (lookahead == 'k') ADVANCE(337);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(212);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 213:
      ACCEPT_TOKEN(sym__band);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1101);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'V') ADVANCE(211);
      if (lookahead == 'd') ADVANCE(418);
      if (lookahead == 'k') ADVANCE(337);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(213);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 214:
      ACCEPT_TOKEN(sym__band);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1101);
      if (lookahead == '/') ADVANCE(9);
      if (lookahead == 'V') ADVANCE(211);
      if (lookahead == 'd') ADVANCE(418);
      if (lookahead == 'k') ADVANCE(337);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(214);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 215:
      ACCEPT_TOKEN(sym__band);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1101);
      if (lookahead == '/') ADVANCE(9);
      if (lookahead == 'V') ADVANCE(211);
      if (lookahead == 'd') ADVANCE(418);
      if (lookahead == 'k') ADVANCE(337);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(216);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 216:
      ACCEPT_TOKEN(sym__band);
      if (lookahead == '-') ADVANCE(88);
      if (lookahead == '.') ADVANCE(1101);
      if (lookahead == '/') ADVANCE(9);
      if (lookahead == 'V') ADVANCE(211);
      if (lookahead == 'd') ADVANCE(418);
      if (lookahead == 'k') ADVANCE(337);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(214);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 217:
      ACCEPT_TOKEN(sym__range);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(53);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 218:
      ACCEPT_TOKEN(sym__range);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(42);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 219:
      ACCEPT_TOKEN(sym__range);
      ADVANCE_MAP(
        '.', 1099,
        'A', 223,
        'H', 1087,
        'K', 1018,
        'M', 1036,
        'V', 221,
        'c', 1085,
        'd', 222,
        'f', 1080,
        'h', 225,
        'k', 1031,
        'm', 224,
        'o', 1053,
        'p', 1083,
        'v', 1038,
        0xb0, 1090,
        0x3a9, 218,
        0x2126, 218,
        '-', 97,
        '/', 97,
        '%', 227,
        'W', 227,
        's', 227,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(219);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 220:
      ACCEPT_TOKEN(sym__range);
      ADVANCE_MAP(
        'A', 223,
        'H', 1087,
        'K', 1018,
        'M', 1036,
        'V', 221,
        'c', 1085,
        'd', 222,
        'f', 1080,
        'h', 225,
        'k', 1031,
        'm', 224,
        'o', 1053,
        'p', 1083,
        'v', 1038,
        0xb0, 1090,
        0x3a9, 218,
        0x2126, 218,
        '-', 97,
        '/', 97,
        '%', 227,
        'W', 227,
        's', 227,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(220);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 221:
      ACCEPT_TOKEN(sym__range);
      if (lookahead == 'A') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 222:
      ACCEPT_TOKEN(sym__range);
      if (lookahead == 'e') ADVANCE(1049);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 223:
      ACCEPT_TOKEN(sym__range);
      if (lookahead == 'h') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 224:
      ACCEPT_TOKEN(sym__range);
      ADVANCE_MAP(
        'i', 1071,
        'o', 1054,
        0x3a9, 217,
        0x2126, 217,
        '-', 97,
        '/', 97,
        '2', 227,
        'A', 227,
        's', 227,
        0xb2, 227,
      );
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 225:
      ACCEPT_TOKEN(sym__range);
      if (lookahead == 'p') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 226:
      ACCEPT_TOKEN(sym__range);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == '2' ||
          lookahead == 0xb2) ADVANCE(227);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 227:
      ACCEPT_TOKEN(sym__range);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 228:
      ACCEPT_TOKEN(sym__list);
      if (lookahead == ',') ADVANCE(83);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(228);
      END_STATE();
    case 229:
      ACCEPT_TOKEN(sym__date);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 230:
      ACCEPT_TOKEN(sym__poles);
      END_STATE();
    case 231:
      ACCEPT_TOKEN(sym__poles);
      if (lookahead == '+') ADVANCE(14);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(257);
      if (lookahead == 'u') ADVANCE(155);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 232:
      ACCEPT_TOKEN(sym__poles);
      if (lookahead == '+') ADVANCE(14);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(155);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 233:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(54);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 234:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(43);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 235:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(236);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 236:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 237:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(54);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 238:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(43);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 239:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == '2') ADVANCE(249);
      if (lookahead == 0xb2) ADVANCE(252);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 240:
      ACCEPT_TOKEN(sym__unit);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'A', 236,
        'a', 605,
        'c', 347,
        'e', 389,
        'i', 724,
        'm', 260,
        'o', 433,
        0xb2, 252,
        0x3a9, 237,
        0x2126, 233,
        '2', 249,
        's', 249,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 241:
      ACCEPT_TOKEN(sym__unit);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'A', 236,
        'a', 605,
        'c', 347,
        'e', 389,
        'i', 724,
        'm', 261,
        'o', 433,
        0xb2, 252,
        0x3a9, 237,
        0x2126, 233,
        '2', 249,
        's', 249,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 242:
      ACCEPT_TOKEN(sym__unit);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'A', 236,
        'a', 605,
        'c', 347,
        'e', 389,
        'i', 724,
        'o', 433,
        0xb2, 252,
        0x3a9, 237,
        0x2126, 233,
        '2', 249,
        's', 249,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 243:
      ACCEPT_TOKEN(sym__unit);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'c', 257,
        'e', 573,
        'i', 802,
        'o', 940,
        'r', 350,
        'u', 897,
        'w', 502,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 244:
      ACCEPT_TOKEN(sym__unit);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'c', 371,
        'e', 452,
        'h', 510,
        'i', 576,
        'm', 372,
        'o', 610,
        'p', 352,
        't', 353,
        'u', 409,
        'w', 635,
        'y', 877,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 245:
      ACCEPT_TOKEN(sym__unit);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'c', 371,
        'e', 453,
        'h', 510,
        'i', 576,
        'm', 372,
        'o', 610,
        'p', 352,
        't', 353,
        'u', 409,
        'w', 635,
        'y', 877,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 246:
      ACCEPT_TOKEN(sym__unit);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'e', 573,
        'i', 802,
        'o', 940,
        'r', 350,
        'u', 897,
        'w', 502,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 247:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(393);
      if (lookahead == 'i') ADVANCE(572);
      if (lookahead == 'p') ADVANCE(249);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 248:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(801);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 249:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 250:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(54);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 251:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(43);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 252:
      ACCEPT_TOKEN(sym__unit);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 253:
      ACCEPT_TOKEN(sym__volts);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'A') ADVANCE(236);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 254:
      ACCEPT_TOKEN(sym__volts);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 255:
      ACCEPT_TOKEN(sym__kilovolts);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 256:
      ACCEPT_TOKEN(sym__phases);
      END_STATE();
    case 257:
      ACCEPT_TOKEN(sym__phases);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 258:
      ACCEPT_TOKEN(sym__sets);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(259);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 259:
      ACCEPT_TOKEN(sym__sets);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 260:
      ACCEPT_TOKEN(sym__trade_unit);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == '2') ADVANCE(262);
      if (lookahead == 0xb2) ADVANCE(263);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 261:
      ACCEPT_TOKEN(sym__trade_unit);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 262:
      ACCEPT_TOKEN(sym__area);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 263:
      ACCEPT_TOKEN(sym__area);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 264:
      ACCEPT_TOKEN(sym__square_mm);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 265:
      ACCEPT_TOKEN(sym__square_mm);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 266:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == '2') ADVANCE(187);
      if (lookahead == 0xb2) ADVANCE(189);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 267:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'A') ADVANCE(147);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 268:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'A') ADVANCE(236);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 269:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'V') ADVANCE(267);
      if (lookahead == 'W') ADVANCE(146);
      if (lookahead == 'v') ADVANCE(271);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 270:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'V') ADVANCE(268);
      if (lookahead == 'W') ADVANCE(235);
      if (lookahead == 'v') ADVANCE(272);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 271:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(275);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 272:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(276);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 273:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(182);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 274:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(266);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 275:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(147);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 276:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(236);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 277:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'z') ADVANCE(147);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 278:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'z') ADVANCE(236);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 279:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(195);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 280:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(97);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 281:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1104);
      if (lookahead == '/') ADVANCE(87);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 282:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1065);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 0xb7) ADVANCE(1060);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 283:
      ACCEPT_TOKEN(sym_name);
      if (lookahead == '-') ADVANCE(96);
      if (lookahead == '.') ADVANCE(1067);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 0xb7) ADVANCE(1069);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 284:
      ACCEPT_TOKEN(sym_legs);
      END_STATE();
    case 285:
      ACCEPT_TOKEN(sym_mark);
      END_STATE();
    case 286:
      ACCEPT_TOKEN(sym_mark);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(135);
      END_STATE();
    case 287:
      ACCEPT_TOKEN(sym_statement);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 288:
      ACCEPT_TOKEN(sym_kind);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 289:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == '0') ADVANCE(295);
      if (('1' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 290:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 291:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(728);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 292:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 293:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(927);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 294:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'w') ADVANCE(358);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 295:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 296:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(39);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 297:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(45);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 298:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(30);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 299:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(24);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 300:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(73);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 301:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-') ADVANCE(66);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 302:
      ACCEPT_TOKEN(sym_key);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 303:
      ACCEPT_TOKEN(sym_flag);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 304:
      ACCEPT_TOKEN(sym_flag);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 305:
      ACCEPT_TOKEN(sym_flag);
      if (lookahead == '-') ADVANCE(63);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 306:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'b') ADVANCE(799);
      if (lookahead == 'g') ADVANCE(555);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 307:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 308:
      ACCEPT_TOKEN(sym_link);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(677);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 309:
      ACCEPT_TOKEN(sym_link);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'c', 585,
        'f', 620,
        's', 910,
        't', 558,
        'v', 541,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 310:
      ACCEPT_TOKEN(sym_link);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'c', 668,
        'f', 620,
        's', 910,
        't', 558,
        'v', 541,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 311:
      ACCEPT_TOKEN(sym_link);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(972);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 312:
      ACCEPT_TOKEN(sym_link);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 313:
      ACCEPT_TOKEN(sym_link);
      if (lookahead == '-') ADVANCE(56);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 314:
      ACCEPT_TOKEN(sym__other);
      END_STATE();
    case 315:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '%', 252,
        '-', 1024,
        '/', 1019,
        '1', 126,
        '3', 126,
        '<', 1023,
        '>', 1023,
        'A', 235,
        'H', 278,
        'K', 283,
        'M', 270,
        'V', 253,
        'W', 236,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 355,
        'd', 243,
        'e', 357,
        'f', 341,
        'g', 493,
        'h', 247,
        'i', 719,
        'j', 953,
        'k', 333,
        'l', 387,
        'm', 240,
        'n', 484,
        'o', 563,
        'p', 359,
        'r', 991,
        's', 244,
        't', 361,
        'u', 755,
        'v', 385,
        'w', 498,
        'x', 992,
        'z', 289,
        0xb0, 1091,
        0x3a9, 238,
        0x2126, 234,
        0xfeff, 315,
        '2', 127,
        '4', 127,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 316:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '%', 252,
        '-', 1024,
        '/', 1019,
        '<', 1023,
        '>', 1023,
        'A', 235,
        'H', 278,
        'K', 283,
        'M', 270,
        'V', 253,
        'W', 236,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 355,
        'd', 246,
        'e', 357,
        'f', 341,
        'g', 493,
        'h', 247,
        'i', 719,
        'j', 953,
        'k', 334,
        'l', 387,
        'm', 241,
        'n', 484,
        'o', 563,
        'p', 359,
        'r', 991,
        's', 245,
        't', 361,
        'u', 755,
        'v', 385,
        'w', 498,
        'x', 992,
        'z', 289,
        0xb0, 1091,
        0x3a9, 238,
        0x2126, 234,
        0xfeff, 316,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 317:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '%', 252,
        '-', 1024,
        '/', 1019,
        '<', 1023,
        '>', 1023,
        'A', 235,
        'H', 278,
        'K', 283,
        'M', 270,
        'V', 253,
        'W', 236,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 355,
        'd', 246,
        'e', 357,
        'f', 341,
        'g', 493,
        'h', 247,
        'i', 725,
        'j', 953,
        'k', 334,
        'l', 387,
        'm', 242,
        'n', 484,
        'o', 563,
        'p', 359,
        'r', 991,
        's', 245,
        't', 361,
        'u', 755,
        'v', 385,
        'w', 498,
        'x', 992,
        'z', 289,
        0xb0, 1091,
        0x3a9, 238,
        0x2126, 234,
        0xfeff, 317,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 318:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '-', 1024,
        '/', 1019,
        '1', 126,
        '3', 126,
        '<', 1023,
        '>', 1023,
        'V', 254,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 356,
        'd', 414,
        'e', 357,
        'f', 342,
        'g', 493,
        'h', 494,
        'i', 719,
        'j', 953,
        'k', 335,
        'l', 387,
        'm', 343,
        'n', 484,
        'o', 564,
        'p', 360,
        'r', 991,
        's', 423,
        't', 361,
        'u', 755,
        'v', 770,
        'w', 498,
        'x', 992,
        'z', 289,
        0xfeff, 318,
        '2', 127,
        '4', 127,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 319:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '-', 1024,
        '/', 1019,
        '1', 126,
        '3', 126,
        '<', 1023,
        '>', 1023,
        'V', 254,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 356,
        'd', 414,
        'e', 357,
        'f', 342,
        'g', 493,
        'h', 494,
        'i', 725,
        'j', 953,
        'k', 336,
        'l', 387,
        'm', 346,
        'n', 484,
        'o', 564,
        'p', 360,
        'r', 991,
        's', 424,
        't', 361,
        'u', 755,
        'v', 770,
        'w', 498,
        'x', 992,
        'z', 289,
        0xfeff, 319,
        '2', 127,
        '4', 127,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 320:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '-', 1024,
        '/', 1019,
        '1', 126,
        '3', 126,
        '<', 1023,
        '>', 1023,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 356,
        'd', 414,
        'e', 357,
        'f', 342,
        'g', 493,
        'h', 494,
        'i', 725,
        'j', 953,
        'k', 566,
        'l', 387,
        'm', 346,
        'n', 484,
        'o', 564,
        'p', 360,
        'r', 991,
        's', 424,
        't', 361,
        'u', 755,
        'v', 770,
        'w', 498,
        'x', 992,
        'z', 289,
        0xfeff, 320,
        '2', 127,
        '4', 127,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 321:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '-', 1024,
        '/', 1019,
        '<', 1023,
        '>', 1023,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 356,
        'd', 482,
        'e', 357,
        'f', 342,
        'g', 493,
        'h', 494,
        'i', 725,
        'j', 953,
        'k', 416,
        'l', 387,
        'm', 344,
        'n', 484,
        'o', 564,
        'p', 360,
        'r', 991,
        's', 424,
        't', 361,
        'u', 755,
        'v', 770,
        'w', 498,
        'x', 992,
        'z', 289,
        0xfeff, 321,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 322:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '-', 1024,
        '/', 1019,
        '<', 1023,
        '>', 1023,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 356,
        'd', 482,
        'e', 357,
        'f', 342,
        'g', 493,
        'h', 494,
        'i', 725,
        'j', 953,
        'k', 566,
        'l', 387,
        'm', 346,
        'n', 484,
        'o', 564,
        'p', 360,
        'r', 991,
        's', 424,
        't', 361,
        'u', 755,
        'v', 770,
        'w', 498,
        'x', 992,
        'z', 289,
        0xfeff, 322,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 323:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '-', 1024,
        '/', 1019,
        '<', 1023,
        '>', 1023,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 356,
        'd', 482,
        'e', 357,
        'f', 342,
        'g', 493,
        'h', 494,
        'i', 725,
        'j', 953,
        'k', 566,
        'l', 387,
        'm', 345,
        'n', 484,
        'o', 564,
        'p', 360,
        'r', 991,
        's', 424,
        't', 361,
        'u', 755,
        'v', 770,
        'w', 498,
        'x', 992,
        'z', 289,
        0xfeff, 323,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 324:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '"', 325,
        '#', 1092,
        '-', 1024,
        '/', 1019,
        '<', 1023,
        '>', 1023,
        '[', 1027,
        'a', 560,
        'b', 339,
        'c', 356,
        'd', 482,
        'e', 357,
        'f', 342,
        'g', 493,
        'h', 494,
        'i', 725,
        'j', 953,
        'k', 338,
        'l', 387,
        'm', 346,
        'n', 484,
        'o', 564,
        'p', 360,
        'r', 991,
        's', 424,
        't', 361,
        'u', 755,
        'v', 770,
        'w', 498,
        'x', 992,
        'z', 289,
        0xfeff, 324,
        '=', 314,
        ']', 314,
        '_', 990,
        'q', 990,
        'y', 990,
      );
      if (('1' <= lookahead && lookahead <= '4')) ADVANCE(127);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 325:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '"') ADVANCE(125);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(3);
      END_STATE();
    case 326:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(17);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 327:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(19);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 328:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(97);
      if (lookahead == '/') ADVANCE(20);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 329:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == '2') ADVANCE(262);
      if (lookahead == 0xb2) ADVANCE(263);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 330:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == '2') ADVANCE(188);
      if (lookahead == 0xb2) ADVANCE(189);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 331:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == '2') ADVANCE(264);
      if (lookahead == 0xb2) ADVANCE(265);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 332:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'A', 147,
        'V', 172,
        'W', 146,
        'c', 710,
        'm', 155,
        'v', 362,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 333:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'A', 236,
        'V', 253,
        'W', 235,
        'c', 709,
        'f', 370,
        'i', 908,
        'm', 249,
        'v', 386,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 334:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'A', 236,
        'V', 253,
        'W', 235,
        'f', 370,
        'i', 908,
        'm', 249,
        'v', 386,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 335:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'V') ADVANCE(254);
      if (lookahead == 'c') ADVANCE(709);
      if (lookahead == 'f') ADVANCE(370);
      if (lookahead == 'i') ADVANCE(908);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 336:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'V') ADVANCE(254);
      if (lookahead == 'f') ADVANCE(370);
      if (lookahead == 'i') ADVANCE(908);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 337:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'V') ADVANCE(211);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 338:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'V') ADVANCE(255);
      if (lookahead == 'f') ADVANCE(370);
      if (lookahead == 'i') ADVANCE(908);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 339:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(875);
      if (lookahead == 'u') ADVANCE(851);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 340:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 341:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 445,
        'e', 497,
        'i', 839,
        'l', 348,
        'r', 365,
        't', 239,
        'u', 665,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 342:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 445,
        'e', 497,
        'i', 839,
        'l', 348,
        'r', 365,
        'u', 665,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 343:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 605,
        'c', 347,
        'e', 389,
        'm', 260,
        'o', 434,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 344:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 605,
        'c', 347,
        'e', 389,
        'm', 329,
        'o', 434,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 345:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 605,
        'c', 347,
        'e', 389,
        'm', 331,
        'o', 434,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 346:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(605);
      if (lookahead == 'c') ADVANCE(347);
      if (lookahead == 'e') ADVANCE(389);
      if (lookahead == 'o') ADVANCE(434);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 347:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(295);
      if (lookahead == 'c') ADVANCE(288);
      if (lookahead == 'o') ADVANCE(965);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 348:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(295);
      if (lookahead == 'o') ADVANCE(778);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 349:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 350:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(971);
      if (lookahead == 'i') ADVANCE(967);
      if (lookahead == 'o') ADVANCE(806);
      if (lookahead == 'y') ADVANCE(520);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 351:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(651);
      if (lookahead == 'r') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 352:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(440);
      if (lookahead == 'd') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 353:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(580);
      if (lookahead == 'e') ADVANCE(803);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 354:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(977);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 355:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 808,
        'h', 364,
        'l', 368,
        'o', 471,
        'r', 607,
        'u', 824,
        'y', 457,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 356:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 808,
        'h', 364,
        'l', 368,
        'o', 471,
        'r', 607,
        'u', 824,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 357:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 838,
        'f', 562,
        'l', 487,
        'm', 507,
        'n', 430,
        'v', 304,
        'x', 634,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 358:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(978);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 359:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 747,
        'e', 351,
        'f', 295,
        'i', 421,
        'r', 767,
        'u', 248,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 360:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 747,
        'e', 351,
        'f', 295,
        'i', 421,
        'r', 767,
        'u', 704,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 361:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 804,
        'e', 705,
        'h', 608,
        'i', 511,
        'o', 579,
        'r', 375,
        'y', 807,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 362:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(823);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 363:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(474);
      if (lookahead == 'g') ADVANCE(308);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 364:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(835);
      if (lookahead == 'e') ADVANCE(427);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 365:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(707);
      if (lookahead == 'e') ADVANCE(819);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 366:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(464);
      if (lookahead == 'c') ADVANCE(408);
      if (lookahead == 's') ADVANCE(872);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 367:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(979);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 368:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(609);
      if (lookahead == 'i') ADVANCE(505);
      if (lookahead == 'o') ADVANCE(882);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 369:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(446);
      if (lookahead == 's') ADVANCE(621);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 370:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(446);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 371:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(679);
      if (lookahead == 'e') ADVANCE(754);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 372:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(674);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 373:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(463);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 374:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(656);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 375:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(730);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 376:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(825);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 377:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(655);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 378:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(737);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 379:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(898);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 380:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(903);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 381:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(844);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 382:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(834);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 383:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(840);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 384:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(832);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 385:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(828);
      if (lookahead == 'o') ADVANCE(689);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 386:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(828);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 387:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 944,
        'e', 363,
        'i', 574,
        'o', 366,
        'r', 349,
        'u', 571,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 388:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(456);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 389:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(888);
      if (lookahead == 'd') ADVANCE(612);
      if (lookahead == 't') ADVANCE(527);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 390:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(578);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 391:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(734);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 392:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'a', 455,
        'c', 513,
        'g', 557,
        'l', 781,
        's', 532,
        'v', 603,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 393:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(914);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 394:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(935);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 395:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(757);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 396:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(883);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 397:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(686);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 398:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(762);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 399:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(746);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 400:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(742);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 401:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(918);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 402:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(454);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 403:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(852);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 404:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(643);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 405:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(928);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 406:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(759);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 407:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(924);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 408:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'a') ADVANCE(937);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 409:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'b') ADVANCE(567);
      if (lookahead == 's') ADVANCE(911);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 410:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'b') ADVANCE(604);
      if (lookahead == 'o') ADVANCE(728);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 411:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'b') ADVANCE(981);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 412:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'b') ADVANCE(682);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 413:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'b') ADVANCE(537);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 414:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'c', 257,
        'e', 667,
        'i', 802,
        'o', 940,
        'r', 350,
        'u', 897,
        'w', 502,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 415:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 416:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(709);
      if (lookahead == 'f') ADVANCE(370);
      if (lookahead == 'i') ADVANCE(908);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 417:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 418:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(183);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 419:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(977);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 420:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(584);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 421:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(653);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 422:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(995);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 423:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'c', 371,
        'e', 452,
        'h', 510,
        'i', 576,
        'm', 372,
        'o', 610,
        'p', 352,
        't', 353,
        'u', 409,
        'w', 635,
        'y', 877,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 424:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'c', 371,
        'e', 453,
        'h', 510,
        'i', 576,
        'm', 372,
        'o', 610,
        'p', 352,
        't', 353,
        'u', 409,
        'w', 635,
        'y', 877,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 425:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(597);
      if (lookahead == 'p') ADVANCE(496);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 426:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(597);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 427:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(654);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 428:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(652);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 429:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(586);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 430:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(666);
      if (lookahead == 'g') ADVANCE(633);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 431:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(976);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 432:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(593);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 433:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(803);
      if (lookahead == 'h') ADVANCE(702);
      if (lookahead == 't') ADVANCE(783);
      if (lookahead == 'u') ADVANCE(761);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 434:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(803);
      if (lookahead == 't') ADVANCE(783);
      if (lookahead == 'u') ADVANCE(761);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 435:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(587);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 436:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 437:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(501);
      if (lookahead == 'n') ADVANCE(578);
      if (lookahead == 't') ADVANCE(516);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 438:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(895);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 439:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(514);
      if (lookahead == 'j') ADVANCE(549);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 440:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(491);
      if (lookahead == 'r') ADVANCE(483);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 441:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(483);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 442:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(894);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 443:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(525);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 444:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(508);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 445:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(926);
      if (lookahead == 'n') ADVANCE(304);
      if (lookahead == 'u') ADVANCE(676);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 446:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(926);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 447:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(786);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 448:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(377);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 449:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(681);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 450:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(920);
      if (lookahead == 'v') ADVANCE(405);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 451:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(380);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 452:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(933);
      if (lookahead == 'r') ADVANCE(632);
      if (lookahead == 't') ADVANCE(258);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 453:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(933);
      if (lookahead == 'r') ADVANCE(632);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 454:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(680);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 455:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(938);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 456:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(649);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 457:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(683);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 458:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(711);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 459:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(936);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 460:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'c') ADVANCE(937);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 461:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 462:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(307);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 463:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 464:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 465:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(300);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 466:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(411);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 467:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(301);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 468:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(489);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 469:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(299);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 470:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(1001);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 471:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(499);
      if (lookahead == 'n') ADVANCE(752);
      if (lookahead == 'o') ADVANCE(671);
      if (lookahead == 'u') ADVANCE(738);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 472:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(798);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 473:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(1003);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 474:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(636);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 475:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 476:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(1011);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 477:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(1006);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 478:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(772);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 479:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(829);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 480:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(673);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 481:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'd') ADVANCE(536);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 482:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'e', 667,
        'i', 802,
        'o', 940,
        'r', 350,
        'u', 897,
        'w', 502,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 483:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 484:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(947);
      if (lookahead == 'i') ADVANCE(812);
      if (lookahead == 'o') ADVANCE(833);
      if (lookahead == 'u') ADVANCE(699);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 485:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(307);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 486:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 487:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(450);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 488:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 489:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(287);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 490:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(290);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 491:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(303);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 492:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(369);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 493:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(760);
      if (lookahead == 'f') ADVANCE(425);
      if (lookahead == 'r') ADVANCE(600);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 494:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(393);
      if (lookahead == 'i') ADVANCE(572);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 495:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(312);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 496:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(305);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 497:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(481);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 498:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(662);
      if (lookahead == 'i') ADVANCE(901);
      if (lookahead == 'y') ADVANCE(489);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 499:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(996);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 500:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(349);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 501:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(975);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 502:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(690);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 503:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(999);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 504:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(738);
      if (lookahead == 't') ADVANCE(647);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 505:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(738);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 506:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(867);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 507:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(857);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 508:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(298);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 509:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(855);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 510:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(462);
      if (lookahead == 'o') ADVANCE(973);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 511:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(461);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 512:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(720);
      if (lookahead == 't') ADVANCE(639);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 513:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(810);
      if (lookahead == 'h') ADVANCE(403);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 514:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(878);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 515:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(836);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 516:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(463);
      if (lookahead == 'i') ADVANCE(766);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 517:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(463);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 518:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(718);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 519:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(868);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 520:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(821);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 521:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(694);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 522:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(1004);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 523:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(866);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 524:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(865);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 525:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(1012);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 526:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(658);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 527:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(825);
      if (lookahead == 'h') ADVANCE(775);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 528:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(825);
      if (lookahead == 'o') ADVANCE(861);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 529:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(825);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 530:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(964);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 531:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(871);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 532:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(849);
      if (lookahead == 'i') ADVANCE(886);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 533:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(907);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 534:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(830);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 535:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(822);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 536:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(826);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 537:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(827);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 538:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(932);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 539:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(863);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 540:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(546);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 541:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(864);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 542:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(881);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 543:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(469);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 544:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(820);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 545:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(703);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 546:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(476);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 547:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(785);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 548:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(743);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 549:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(438);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 550:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(740);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 551:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(477);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 552:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(442);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 553:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(741);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 554:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(744);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 555:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(376);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 556:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(535);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 557:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(764);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 558:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(859);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 559:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(460);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 560:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'f', 426,
        'l', 657,
        'm', 410,
        'p', 805,
        's', 873,
        't', 313,
        'u', 899,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 561:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'f') ADVANCE(307);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 562:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'f') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 563:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'f', 561,
        'h', 700,
        'n', 307,
        'p', 512,
        'u', 906,
        'v', 509,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 564:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 97,
        'f', 561,
        'n', 307,
        'p', 512,
        'u', 906,
        'v', 509,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 565:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'f') ADVANCE(528);
      if (lookahead == 'i') ADVANCE(504);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 566:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'f') ADVANCE(370);
      if (lookahead == 'i') ADVANCE(908);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 567:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'f') ADVANCE(540);
      if (lookahead == 't') ADVANCE(854);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 568:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 569:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 570:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(985);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 571:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(993);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 572:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(584);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 573:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(986);
      if (lookahead == 'l') ADVANCE(354);
      if (lookahead == 'm') ADVANCE(795);
      if (lookahead == 't') ADVANCE(949);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 574:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(596);
      if (lookahead == 'k') ADVANCE(486);
      if (lookahead == 'm') ADVANCE(619);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 575:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(591);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 576:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(718);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 577:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(866);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 578:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 579:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(533);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 580:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(506);
      if (lookahead == 'n') ADVANCE(466);
      if (lookahead == 'r') ADVANCE(931);
      if (lookahead == 't') ADVANCE(623);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 581:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(550);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 582:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'g') ADVANCE(529);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 583:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 584:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 585:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(261);
      if (lookahead == 'l') ADVANCE(955);
      if (lookahead == 'o') ADVANCE(714);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 586:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(178);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 587:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(306);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 588:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(293);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 589:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(698);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 590:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(701);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 591:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(1011);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 592:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(396);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 593:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(518);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 594:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(601);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 595:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(520);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 596:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'h') ADVANCE(912);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 597:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 598:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(421);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 599:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(897);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 600:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(470);
      if (lookahead == 'o') ADVANCE(941);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 601:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(728);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 602:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(867);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 603:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(890);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 604:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(505);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 605:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(721);
      if (lookahead == 'n') ADVANCE(957);
      if (lookahead == 'r') ADVANCE(622);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 606:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(721);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 607:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(909);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 608:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(850);
      if (lookahead == 'r') ADVANCE(776);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 609:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(697);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 610:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(656);
      if (lookahead == 'u') ADVANCE(842);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 611:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(813);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 612:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(448);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 613:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(692);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 614:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(876);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 615:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(659);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 616:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(905);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 617:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(395);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 618:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(715);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 619:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(892);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 620:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(763);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 621:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(884);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 622:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(739);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 623:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(415);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 624:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(660);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 625:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(768);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 626:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(735);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 627:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(661);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 628:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(900);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 629:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(417);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 630:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(898);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 631:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(751);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 632:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(506);
      if (lookahead == 'v') ADVANCE(638);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 633:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(745);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 634:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(885);
      if (lookahead == 'p') ADVANCE(549);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 635:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(916);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 636:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(731);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 637:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(517);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 638:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(444);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 639:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(787);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 640:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(886);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 641:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(921);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 642:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(968);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 643:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(750);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 644:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(788);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 645:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(912);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 646:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(790);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 647:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(773);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 648:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(831);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 649:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(924);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 650:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(406);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 651:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'k') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 652:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'k') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 653:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'k') ADVANCE(945);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 654:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'k') ADVANCE(517);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 655:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 656:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 657:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(311);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 658:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 659:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(262);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 660:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(180);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 661:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(188);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 662:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(474);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 663:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(984);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 664:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(1000);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 665:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(664);
      if (lookahead == 's') ADVANCE(490);
      if (lookahead == 't') ADVANCE(956);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 666:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(800);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 667:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(354);
      if (lookahead == 'm') ADVANCE(795);
      if (lookahead == 't') ADVANCE(949);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 668:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(955);
      if (lookahead == 'o') ADVANCE(714);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 669:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(1009);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 670:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(617);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 671:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(636);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 672:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(784);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 673:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 674:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(669);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 675:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(793);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 676:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(902);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 677:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(663);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 678:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(771);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 679:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(485);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 680:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(483);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 681:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(519);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 682:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(522);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 683:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(531);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 684:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(394);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 685:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(601);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 686:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(687);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 687:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(982);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 688:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(614);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 689:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(913);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 690:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(685);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 691:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(678);
      if (lookahead == 'r') ADVANCE(706);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 692:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(628);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 693:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'l') ADVANCE(650);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 694:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 695:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(330);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 696:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(977);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 697:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(312);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 698:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(156);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 699:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(413);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 700:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(251);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 701:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(157);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 702:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(250);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 703:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(803);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 704:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(801);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 705:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(814);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 706:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(636);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 707:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 708:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(495);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 709:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(615);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 710:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(624);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 711:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(627);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 712:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(791);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 713:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(529);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 714:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(535);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 715:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(645);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 716:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(397);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 717:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'm') ADVANCE(554);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 718:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 719:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(309);
      if (lookahead == 's') ADVANCE(774);
      if (lookahead == 't') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 720:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(307);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 721:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 722:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(155);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 723:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 724:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(249);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 725:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(310);
      if (lookahead == 's') ADVANCE(774);
      if (lookahead == 't') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 726:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(429);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 727:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(867);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 728:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(569);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 729:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(459);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 730:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(870);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 731:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(568);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 732:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(461);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 733:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(479);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 734:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(463);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 735:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(959);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 736:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(779);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 737:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(874);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 738:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(892);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 739:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(340);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 740:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(431);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 741:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(419);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 742:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(420);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 743:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(915);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 744:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(891);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 745:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(556);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 746:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(547);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 747:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(526);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 748:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(467);
      if (lookahead == 'p') ADVANCE(517);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 749:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(377);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 750:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(517);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 751:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(478);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 752:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(559);
      if (lookahead == 't') ADVANCE(626);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 753:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(601);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 754:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(381);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 755:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(616);
      if (lookahead == 'p') ADVANCE(869);
      if (lookahead == 't') ADVANCE(613);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 756:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(765);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 757:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(441);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 758:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(629);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 759:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(436);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 760:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(524);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 761:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(925);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 762:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(919);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 763:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(641);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 764:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(539);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 765:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n') ADVANCE(552);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 766:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 767:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(439);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 768:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(287);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 769:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(691);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 770:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(689);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 771:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(974);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 772:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(970);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 773:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(721);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 774:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(684);
      if (lookahead == 's') ADVANCE(952);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 775:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(463);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 776:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(954);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 777:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(821);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 778:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(837);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 779:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(696);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 780:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(736);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 781:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(451);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 782:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(948);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 783:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(825);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 784:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(373);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 785:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(943);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 786:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(756);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 787:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(749);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 788:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(727);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 789:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(822);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 790:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(723);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 791:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(758);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 792:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(860);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 793:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(428);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 794:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(475);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 795:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(688);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 796:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(961);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 797:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(880);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 798:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(777);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 799:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(384);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 800:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'o') ADVANCE(889);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 801:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 802:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(295);
      if (lookahead == 's') ADVANCE(447);
      if (lookahead == 'v') ADVANCE(515);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 803:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 804:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(292);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 805:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(670);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 806:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(997);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 807:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(489);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 808:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(388);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 809:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 810:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(923);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 811:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(518);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 812:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(815);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 813:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(717);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 814:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(792);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 815:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(680);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 816:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(693);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 817:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'p') ADVANCE(816);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 818:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'q') ADVANCE(950);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 819:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'q') ADVANCE(963);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 820:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'q') ADVANCE(951);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 821:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 822:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 823:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(155);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 824:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(856);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 825:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 826:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(287);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 827:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(291);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 828:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(249);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 829:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(977);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 830:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(978);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 831:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(511);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 832:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(464);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 833:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(716);
      if (lookahead == 't') ADVANCE(994);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 834:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(976);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 835:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(582);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 836:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(887);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 837:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(1002);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 838:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(904);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 839:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(503);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 840:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(712);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 841:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(794);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 842:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(443);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 843:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 844:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(625);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 845:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(796);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 846:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(483);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 847:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(543);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 848:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(500);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 849:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(966);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 850:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(473);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 851:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(637);
      if (lookahead == 's') ADVANCE(294);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 852:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(578);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 853:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(377);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 854:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(378);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 855:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(672);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 856:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(548);
      if (lookahead == 'v') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 857:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(581);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 858:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(374);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 859:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(675);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 860:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(382);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 861:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(713);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 862:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(400);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 863:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(401);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 864:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(930);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 865:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'r') ADVANCE(407);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 866:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 867:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 868:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(155);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 869:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 870:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(565);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 871:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(249);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 872:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(296);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 873:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(958);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 874:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(604);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 875:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(602);
      if (lookahead == 't') ADVANCE(929);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 876:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(583);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 877:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(922);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 878:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(866);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 879:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 880:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(892);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 881:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(640);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 882:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(485);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 883:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(523);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 884:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(926);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 885:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(912);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 886:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(938);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 887:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(599);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 888:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(960);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 889:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(962);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 890:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 's') ADVANCE(647);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 891:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 892:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 893:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(150);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 894:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 895:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(287);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 896:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(175);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 897:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(977);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 898:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(584);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 899:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(780);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 900:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(978);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 901:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(588);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 902:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(297);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 903:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(511);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 904:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(594);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 905:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(867);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 906:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(472);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 907:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(595);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 908:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(432);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 909:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(612);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 910:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(398);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 911:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(404);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 912:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(636);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 913:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(390);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 914:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(998);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 915:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(1008);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 916:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(435);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 917:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(858);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 918:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(642);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 919:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(399);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 920:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(841);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 921:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(483);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 922:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(521);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 923:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(402);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 924:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(783);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 925:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(601);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 926:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(789);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 927:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(391);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 928:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(777);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 929:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(534);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 930:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(529);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 931:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(535);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 932:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(931);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 933:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(644);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 934:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(853);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 935:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(551);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 936:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(646);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 937:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(647);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 938:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 't') ADVANCE(406);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 939:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(155);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 940:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(412);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 941:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(748);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 942:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(704);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 943:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(867);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 944:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(733);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 945:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(803);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 946:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(577);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 947:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(917);
      if (lookahead == 'w') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 948:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(866);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 949:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(753);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 950:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(611);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 951:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(648);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 952:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(495);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 953:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(729);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 954:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(575);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 955:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(468);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 956:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(846);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 957:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(377);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 958:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(708);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 959:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(782);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 960:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(847);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 961:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(732);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 962:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(843);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 963:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(553);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 964:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'u') ADVANCE(934);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 965:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'v') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 966:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'v') ADVANCE(486);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 967:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'v') ADVANCE(488);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 968:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'v') ADVANCE(483);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 969:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'v') ADVANCE(535);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 970:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'w') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 971:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'w') ADVANCE(987);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 972:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'w') ADVANCE(312);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 973:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'w') ADVANCE(1007);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 974:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'w') ADVANCE(636);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 975:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'w') ADVANCE(367);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 976:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'y') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 977:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'y') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 978:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'y') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 979:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'y') ADVANCE(287);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 980:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'y') ADVANCE(449);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 981:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'y') ADVANCE(1005);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 982:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'y') ADVANCE(1010);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 983:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'y') ADVANCE(809);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 984:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'y') ADVANCE(1013);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 985:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(147);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 986:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(236);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 987:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'n' ||
          lookahead == 's') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 988:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(191);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 989:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(229);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 990:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 991:
      ACCEPT_TOKEN(sym__other);
      ADVANCE_MAP(
        '-', 95,
        '.', 1105,
        '/', 78,
        'a', 437,
        'c', 465,
        'd', 422,
        'e', 392,
        'i', 879,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 992:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(95);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(65);
      if (lookahead == '0' ||
          lookahead == '2') ADVANCE(295);
      if (('1' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 993:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(74);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 994:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(77);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'e') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 995:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(28);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 996:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(47);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 997:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(25);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 998:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(62);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(731);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 999:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(62);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1000:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(69);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1001:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(32);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1002:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(23);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1003:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(38);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1004:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(58);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1005:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(59);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1006:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(34);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1007:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(76);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1008:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(48);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1009:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(22);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1010:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(60);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1011:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(46);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1012:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(67);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1013:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-') ADVANCE(68);
      if (lookahead == '.') ADVANCE(1105);
      if (lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1014:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '.') ADVANCE(1060);
      if (lookahead == 0xb7) ADVANCE(1060);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1015:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '.') ADVANCE(1096);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(133);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1016:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '.') ADVANCE(1096);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(134);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1017:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '.') ADVANCE(1096);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1018:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '.') ADVANCE(1068);
      if (lookahead == 0xb7) ADVANCE(1068);
      if (('-' <= lookahead && lookahead <= '/')) ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1019:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '/') ADVANCE(119);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1020:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '2') ADVANCE(142);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1021:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '4') ADVANCE(142);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1022:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '6') ADVANCE(142);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1023:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '=') ADVANCE(285);
      END_STATE();
    case 1024:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '>') ADVANCE(285);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(136);
      if ((!eof && set_contains(sym__other_character_set_2, 14, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1025:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'A') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1026:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'A') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1027:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'L') ADVANCE(82);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == ',' ||
          lookahead == 0xa0) ADVANCE(13);
      if (('A' <= lookahead && lookahead <= 'C') ||
          lookahead == 'N') ADVANCE(12);
      END_STATE();
    case 1028:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'V') ADVANCE(173);
      if (lookahead == 'W') ADVANCE(162);
      if (lookahead == 'v') ADVANCE(1037);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == 'A' ||
          lookahead == 'm') ADVANCE(170);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1029:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'V') ADVANCE(1025);
      if (lookahead == 'W') ADVANCE(162);
      if (lookahead == 'v') ADVANCE(1037);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == 'A' ||
          lookahead == 'm') ADVANCE(170);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1030:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'V') ADVANCE(1025);
      if (lookahead == 'W') ADVANCE(162);
      if (lookahead == 'v') ADVANCE(1037);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1031:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'V') ADVANCE(221);
      if (lookahead == 'W') ADVANCE(223);
      if (lookahead == 'v') ADVANCE(1038);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == 'A' ||
          lookahead == 'm') ADVANCE(227);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1032:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'V') ADVANCE(210);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1033:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'V') ADVANCE(209);
      if (lookahead == 'W') ADVANCE(162);
      if (lookahead == 'v') ADVANCE(1037);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == 'A' ||
          lookahead == 'm') ADVANCE(170);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1034:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'V') ADVANCE(199);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1035:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'V') ADVANCE(197);
      if (lookahead == 'W') ADVANCE(162);
      if (lookahead == 'v') ADVANCE(1037);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == 'A' ||
          lookahead == 'm') ADVANCE(170);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1036:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'V') ADVANCE(1026);
      if (lookahead == 'W') ADVANCE(223);
      if (lookahead == 'v') ADVANCE(1038);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1037:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'a') ADVANCE(1073);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1038:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'a') ADVANCE(1074);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1039:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'c') ADVANCE(1057);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1040:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'c') ADVANCE(1050);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1041:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'c') ADVANCE(1063);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1042:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'c') ADVANCE(1058);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1043:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'e') ADVANCE(1075);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1044:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'e') ADVANCE(1076);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1045:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'f') ADVANCE(1077);
      if (lookahead == 'm') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1046:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'f') ADVANCE(1079);
      if (lookahead == 'm') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1047:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'f') ADVANCE(1081);
      if (lookahead == 'm') ADVANCE(252);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1048:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'g') ADVANCE(1089);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1049:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'g') ADVANCE(1090);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1050:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'h') ADVANCE(179);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1051:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'h') ADVANCE(1059);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1052:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'h') ADVANCE(1064);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1053:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'h') ADVANCE(1061);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1054:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'h') ADVANCE(1066);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1055:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'i') ADVANCE(1056);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1056:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'l') ADVANCE(189);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1057:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'l') ADVANCE(1043);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1058:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'l') ADVANCE(1044);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1059:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(144);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1060:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(326);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1061:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(218);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1062:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(1088);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1063:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(1055);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1064:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(145);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1065:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(122);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('a' <= lookahead && lookahead <= 'z')) ADVANCE(121);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1066:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(217);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1067:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(123);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('a' <= lookahead && lookahead <= 'z')) ADVANCE(121);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1068:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(327);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1069:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'm') ADVANCE(328);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1070:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'n') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1071:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'n') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1072:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'n') ADVANCE(1040);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1073:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'r') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1074:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'r') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1075:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 's') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1076:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 's') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1077:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 't') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1078:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 't') ADVANCE(169);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1079:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 't') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1080:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 't') ADVANCE(226);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1081:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 't') ADVANCE(252);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1082:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'u') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1083:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'u') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1084:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'y') ADVANCE(1039);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1085:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'y') ADVANCE(1042);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1086:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'z') ADVANCE(170);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1087:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == 'z') ADVANCE(227);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1088:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == '2' ||
          lookahead == 0xb2) ADVANCE(189);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1089:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(170);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1090:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(227);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1091:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(252);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1092:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(184);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1093:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(186);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1094:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(192);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1095:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(138);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1096:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(219);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1097:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(208);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1098:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(193);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1099:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(220);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1100:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(198);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1101:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(212);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1102:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(194);
      if (('a' <= lookahead && lookahead <= 'z')) ADVANCE(121);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          lookahead == '_' ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1103:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(190);
      if (lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1104:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('a' <= lookahead && lookahead <= 'z')) ADVANCE(121);
      if (set_contains(sym_port_character_set_3, 9, lookahead)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1105:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if (('0' <= lookahead && lookahead <= '9') ||
          lookahead == '_' ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(990);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          (0xc0 <= lookahead && lookahead <= 0xd6) ||
          (0xd8 <= lookahead && lookahead <= 0xf6) ||
          (0xf8 <= lookahead && lookahead <= 0x1fff) ||
          (0x2c00 <= lookahead && lookahead <= 0x2fff) ||
          (0x3040 <= lookahead && lookahead <= 0xfdff)) ADVANCE(280);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    case 1106:
      ACCEPT_TOKEN(sym__other);
      if (lookahead == '-' ||
          lookahead == '/') ADVANCE(97);
      if ((!eof && set_contains(sym__other_character_set_3, 13, lookahead))) ADVANCE(1106);
      END_STATE();
    default:
      return false;
  }
}

static const TSLexMode ts_lex_modes[STATE_COUNT] = {
  [0] = {.lex_state = 0},
  [1] = {.lex_state = 108},
  [2] = {.lex_state = 109},
  [3] = {.lex_state = 108},
  [4] = {.lex_state = 108},
  [5] = {.lex_state = 110},
  [6] = {.lex_state = 111},
  [7] = {.lex_state = 112},
  [8] = {.lex_state = 111},
  [9] = {.lex_state = 113},
  [10] = {.lex_state = 114},
  [11] = {.lex_state = 115},
  [12] = {.lex_state = 116},
  [13] = {.lex_state = 113},
  [14] = {.lex_state = 113},
  [15] = {.lex_state = 108},
  [16] = {.lex_state = 108},
  [17] = {.lex_state = 108},
  [18] = {.lex_state = 108},
  [19] = {.lex_state = 108},
  [20] = {.lex_state = 108},
  [21] = {.lex_state = 108},
  [22] = {.lex_state = 108},
  [23] = {.lex_state = 108},
  [24] = {.lex_state = 108},
  [25] = {.lex_state = 0},
  [26] = {.lex_state = 2},
};

static const uint16_t ts_parse_table[LARGE_STATE_COUNT][SYMBOL_COUNT] = {
  [0] = {
    [ts_builtin_sym_end] = ACTIONS(1),
    [sym_doc] = ACTIONS(1),
    [sym_comment] = ACTIONS(1),
    [sym_port] = ACTIONS(1),
    [sym_text] = ACTIONS(1),
    [sym__number] = ACTIONS(1),
    [sym__fraction] = ACTIONS(1),
    [sym__tight_quantity] = ACTIONS(1),
    [sym__tight_volts] = ACTIONS(1),
    [sym__tight_sets] = ACTIONS(1),
    [sym__tight_trade_size] = ACTIONS(1),
    [sym__tight_size] = ACTIONS(1),
    [sym__tight_dc] = ACTIONS(1),
    [sym__gauge] = ACTIONS(1),
    [sym__tight_run] = ACTIONS(1),
    [sym__run_of] = ACTIONS(1),
    [sym__cable_of] = ACTIONS(1),
    [sym__pair] = ACTIONS(1),
    [sym__short_pair] = ACTIONS(1),
    [sym__tight_short_pair] = ACTIONS(1),
    [sym__band] = ACTIONS(1),
    [sym__range] = ACTIONS(1),
    [sym__list] = ACTIONS(1),
    [sym__date] = ACTIONS(1),
    [sym__poles] = ACTIONS(1),
    [sym__volts] = ACTIONS(1),
    [sym__kilovolts] = ACTIONS(1),
    [sym__phases] = ACTIONS(1),
    [sym__sets] = ACTIONS(1),
    [sym__trade_unit] = ACTIONS(1),
    [sym__area] = ACTIONS(1),
    [sym_name] = ACTIONS(1),
    [sym_legs] = ACTIONS(1),
    [sym_mark] = ACTIONS(1),
    [sym_statement] = ACTIONS(1),
    [sym_kind] = ACTIONS(1),
    [sym_key] = ACTIONS(1),
    [sym_flag] = ACTIONS(1),
    [sym_action] = ACTIONS(1),
    [sym_link] = ACTIONS(1),
    [sym__other] = ACTIONS(1),
  },
  [1] = {
    [sym_model] = STATE(25),
    [sym_voltage] = STATE(4),
    [sym_conductor] = STATE(4),
    [sym_quantity] = STATE(4),
    [sym_count] = STATE(4),
    [sym_other] = STATE(4),
    [aux_sym_model_repeat1] = STATE(4),
    [ts_builtin_sym_end] = ACTIONS(3),
    [sym_doc] = ACTIONS(5),
    [sym_comment] = ACTIONS(5),
    [sym_port] = ACTIONS(5),
    [sym_text] = ACTIONS(5),
    [sym__number] = ACTIONS(7),
    [sym__fraction] = ACTIONS(9),
    [sym__tight_quantity] = ACTIONS(11),
    [sym__tight_volts] = ACTIONS(13),
    [sym__tight_sets] = ACTIONS(15),
    [sym__tight_trade_size] = ACTIONS(17),
    [sym__tight_size] = ACTIONS(17),
    [sym__tight_dc] = ACTIONS(19),
    [sym__gauge] = ACTIONS(17),
    [sym__tight_run] = ACTIONS(17),
    [sym__run_of] = ACTIONS(21),
    [sym__cable_of] = ACTIONS(23),
    [sym__pair] = ACTIONS(25),
    [sym__short_pair] = ACTIONS(27),
    [sym__tight_short_pair] = ACTIONS(25),
    [sym__band] = ACTIONS(29),
    [sym__range] = ACTIONS(31),
    [sym__list] = ACTIONS(15),
    [sym__date] = ACTIONS(15),
    [sym__poles] = ACTIONS(15),
    [sym_name] = ACTIONS(5),
    [sym_legs] = ACTIONS(5),
    [sym_mark] = ACTIONS(5),
    [sym_statement] = ACTIONS(5),
    [sym_kind] = ACTIONS(5),
    [sym_key] = ACTIONS(5),
    [sym_flag] = ACTIONS(5),
    [sym_action] = ACTIONS(5),
    [sym_link] = ACTIONS(5),
    [sym__other] = ACTIONS(33),
  },
  [2] = {
    [ts_builtin_sym_end] = ACTIONS(35),
    [sym_doc] = ACTIONS(37),
    [sym_comment] = ACTIONS(37),
    [sym_port] = ACTIONS(37),
    [sym_text] = ACTIONS(37),
    [sym__number] = ACTIONS(37),
    [sym__fraction] = ACTIONS(37),
    [sym__tight_quantity] = ACTIONS(37),
    [sym__tight_volts] = ACTIONS(37),
    [sym__tight_sets] = ACTIONS(37),
    [sym__tight_trade_size] = ACTIONS(37),
    [sym__tight_size] = ACTIONS(37),
    [sym__tight_dc] = ACTIONS(37),
    [sym__gauge] = ACTIONS(37),
    [sym__tight_run] = ACTIONS(37),
    [sym__run_of] = ACTIONS(37),
    [sym__cable_of] = ACTIONS(37),
    [sym__pair] = ACTIONS(37),
    [sym__short_pair] = ACTIONS(37),
    [sym__tight_short_pair] = ACTIONS(37),
    [sym__band] = ACTIONS(37),
    [sym__range] = ACTIONS(37),
    [sym__list] = ACTIONS(37),
    [sym__date] = ACTIONS(37),
    [sym__poles] = ACTIONS(37),
    [sym__unit] = ACTIONS(39),
    [sym__volts] = ACTIONS(41),
    [sym__phases] = ACTIONS(43),
    [sym__sets] = ACTIONS(45),
    [sym__trade_unit] = ACTIONS(47),
    [sym__area] = ACTIONS(47),
    [sym_name] = ACTIONS(37),
    [sym_legs] = ACTIONS(37),
    [sym_mark] = ACTIONS(37),
    [sym_statement] = ACTIONS(37),
    [sym_kind] = ACTIONS(37),
    [sym_key] = ACTIONS(37),
    [sym_flag] = ACTIONS(37),
    [sym_action] = ACTIONS(37),
    [sym_link] = ACTIONS(37),
    [sym__other] = ACTIONS(37),
  },
  [3] = {
    [sym_voltage] = STATE(3),
    [sym_conductor] = STATE(3),
    [sym_quantity] = STATE(3),
    [sym_count] = STATE(3),
    [sym_other] = STATE(3),
    [aux_sym_model_repeat1] = STATE(3),
    [ts_builtin_sym_end] = ACTIONS(49),
    [sym_doc] = ACTIONS(51),
    [sym_comment] = ACTIONS(51),
    [sym_port] = ACTIONS(51),
    [sym_text] = ACTIONS(51),
    [sym__number] = ACTIONS(54),
    [sym__fraction] = ACTIONS(57),
    [sym__tight_quantity] = ACTIONS(60),
    [sym__tight_volts] = ACTIONS(63),
    [sym__tight_sets] = ACTIONS(66),
    [sym__tight_trade_size] = ACTIONS(69),
    [sym__tight_size] = ACTIONS(69),
    [sym__tight_dc] = ACTIONS(72),
    [sym__gauge] = ACTIONS(69),
    [sym__tight_run] = ACTIONS(69),
    [sym__run_of] = ACTIONS(75),
    [sym__cable_of] = ACTIONS(78),
    [sym__pair] = ACTIONS(81),
    [sym__short_pair] = ACTIONS(84),
    [sym__tight_short_pair] = ACTIONS(81),
    [sym__band] = ACTIONS(87),
    [sym__range] = ACTIONS(90),
    [sym__list] = ACTIONS(66),
    [sym__date] = ACTIONS(66),
    [sym__poles] = ACTIONS(66),
    [sym_name] = ACTIONS(51),
    [sym_legs] = ACTIONS(51),
    [sym_mark] = ACTIONS(51),
    [sym_statement] = ACTIONS(51),
    [sym_kind] = ACTIONS(51),
    [sym_key] = ACTIONS(51),
    [sym_flag] = ACTIONS(51),
    [sym_action] = ACTIONS(51),
    [sym_link] = ACTIONS(51),
    [sym__other] = ACTIONS(93),
  },
  [4] = {
    [sym_voltage] = STATE(3),
    [sym_conductor] = STATE(3),
    [sym_quantity] = STATE(3),
    [sym_count] = STATE(3),
    [sym_other] = STATE(3),
    [aux_sym_model_repeat1] = STATE(3),
    [ts_builtin_sym_end] = ACTIONS(96),
    [sym_doc] = ACTIONS(98),
    [sym_comment] = ACTIONS(98),
    [sym_port] = ACTIONS(98),
    [sym_text] = ACTIONS(98),
    [sym__number] = ACTIONS(7),
    [sym__fraction] = ACTIONS(9),
    [sym__tight_quantity] = ACTIONS(11),
    [sym__tight_volts] = ACTIONS(13),
    [sym__tight_sets] = ACTIONS(15),
    [sym__tight_trade_size] = ACTIONS(17),
    [sym__tight_size] = ACTIONS(17),
    [sym__tight_dc] = ACTIONS(19),
    [sym__gauge] = ACTIONS(17),
    [sym__tight_run] = ACTIONS(17),
    [sym__run_of] = ACTIONS(21),
    [sym__cable_of] = ACTIONS(23),
    [sym__pair] = ACTIONS(25),
    [sym__short_pair] = ACTIONS(27),
    [sym__tight_short_pair] = ACTIONS(25),
    [sym__band] = ACTIONS(29),
    [sym__range] = ACTIONS(31),
    [sym__list] = ACTIONS(15),
    [sym__date] = ACTIONS(15),
    [sym__poles] = ACTIONS(15),
    [sym_name] = ACTIONS(98),
    [sym_legs] = ACTIONS(98),
    [sym_mark] = ACTIONS(98),
    [sym_statement] = ACTIONS(98),
    [sym_kind] = ACTIONS(98),
    [sym_key] = ACTIONS(98),
    [sym_flag] = ACTIONS(98),
    [sym_action] = ACTIONS(98),
    [sym_link] = ACTIONS(98),
    [sym__other] = ACTIONS(33),
  },
  [5] = {
    [ts_builtin_sym_end] = ACTIONS(100),
    [sym_doc] = ACTIONS(102),
    [sym_comment] = ACTIONS(102),
    [sym_port] = ACTIONS(102),
    [sym_text] = ACTIONS(102),
    [sym__number] = ACTIONS(102),
    [sym__fraction] = ACTIONS(102),
    [sym__tight_quantity] = ACTIONS(102),
    [sym__tight_volts] = ACTIONS(102),
    [sym__tight_sets] = ACTIONS(102),
    [sym__tight_trade_size] = ACTIONS(102),
    [sym__tight_size] = ACTIONS(102),
    [sym__tight_dc] = ACTIONS(102),
    [sym__gauge] = ACTIONS(102),
    [sym__tight_run] = ACTIONS(102),
    [sym__run_of] = ACTIONS(102),
    [sym__cable_of] = ACTIONS(102),
    [sym__pair] = ACTIONS(102),
    [sym__short_pair] = ACTIONS(102),
    [sym__tight_short_pair] = ACTIONS(102),
    [sym__band] = ACTIONS(102),
    [sym__range] = ACTIONS(102),
    [sym__list] = ACTIONS(102),
    [sym__date] = ACTIONS(102),
    [sym__poles] = ACTIONS(102),
    [sym__unit] = ACTIONS(39),
    [sym__volts] = ACTIONS(39),
    [sym__trade_unit] = ACTIONS(47),
    [sym_name] = ACTIONS(102),
    [sym_legs] = ACTIONS(102),
    [sym_mark] = ACTIONS(102),
    [sym_statement] = ACTIONS(102),
    [sym_kind] = ACTIONS(102),
    [sym_key] = ACTIONS(102),
    [sym_flag] = ACTIONS(102),
    [sym_action] = ACTIONS(102),
    [sym_link] = ACTIONS(102),
    [sym__other] = ACTIONS(102),
  },
  [6] = {
    [ts_builtin_sym_end] = ACTIONS(104),
    [sym_doc] = ACTIONS(106),
    [sym_comment] = ACTIONS(106),
    [sym_port] = ACTIONS(106),
    [sym_text] = ACTIONS(106),
    [sym__number] = ACTIONS(106),
    [sym__fraction] = ACTIONS(106),
    [sym__tight_quantity] = ACTIONS(106),
    [sym__tight_volts] = ACTIONS(106),
    [sym__tight_sets] = ACTIONS(106),
    [sym__tight_trade_size] = ACTIONS(106),
    [sym__tight_size] = ACTIONS(106),
    [sym__tight_dc] = ACTIONS(106),
    [sym__gauge] = ACTIONS(106),
    [sym__tight_run] = ACTIONS(106),
    [sym__run_of] = ACTIONS(106),
    [sym__cable_of] = ACTIONS(106),
    [sym__pair] = ACTIONS(106),
    [sym__short_pair] = ACTIONS(106),
    [sym__tight_short_pair] = ACTIONS(106),
    [sym__band] = ACTIONS(106),
    [sym__range] = ACTIONS(106),
    [sym__list] = ACTIONS(106),
    [sym__date] = ACTIONS(106),
    [sym__poles] = ACTIONS(106),
    [sym__volts] = ACTIONS(108),
    [sym__phases] = ACTIONS(43),
    [sym_name] = ACTIONS(106),
    [sym_legs] = ACTIONS(106),
    [sym_mark] = ACTIONS(106),
    [sym_statement] = ACTIONS(106),
    [sym_kind] = ACTIONS(106),
    [sym_key] = ACTIONS(106),
    [sym_flag] = ACTIONS(106),
    [sym_action] = ACTIONS(106),
    [sym_link] = ACTIONS(106),
    [sym__other] = ACTIONS(106),
  },
  [7] = {
    [ts_builtin_sym_end] = ACTIONS(35),
    [sym_doc] = ACTIONS(37),
    [sym_comment] = ACTIONS(37),
    [sym_port] = ACTIONS(37),
    [sym_text] = ACTIONS(37),
    [sym__number] = ACTIONS(37),
    [sym__fraction] = ACTIONS(37),
    [sym__tight_quantity] = ACTIONS(37),
    [sym__tight_volts] = ACTIONS(37),
    [sym__tight_sets] = ACTIONS(37),
    [sym__tight_trade_size] = ACTIONS(37),
    [sym__tight_size] = ACTIONS(37),
    [sym__tight_dc] = ACTIONS(37),
    [sym__gauge] = ACTIONS(37),
    [sym__tight_run] = ACTIONS(37),
    [sym__run_of] = ACTIONS(37),
    [sym__cable_of] = ACTIONS(37),
    [sym__pair] = ACTIONS(37),
    [sym__short_pair] = ACTIONS(37),
    [sym__tight_short_pair] = ACTIONS(37),
    [sym__band] = ACTIONS(37),
    [sym__range] = ACTIONS(37),
    [sym__list] = ACTIONS(37),
    [sym__date] = ACTIONS(37),
    [sym__poles] = ACTIONS(37),
    [sym__unit] = ACTIONS(45),
    [sym__volts] = ACTIONS(45),
    [sym_name] = ACTIONS(37),
    [sym_legs] = ACTIONS(37),
    [sym_mark] = ACTIONS(37),
    [sym_statement] = ACTIONS(37),
    [sym_kind] = ACTIONS(37),
    [sym_key] = ACTIONS(37),
    [sym_flag] = ACTIONS(37),
    [sym_action] = ACTIONS(37),
    [sym_link] = ACTIONS(37),
    [sym__other] = ACTIONS(37),
  },
  [8] = {
    [ts_builtin_sym_end] = ACTIONS(100),
    [sym_doc] = ACTIONS(102),
    [sym_comment] = ACTIONS(102),
    [sym_port] = ACTIONS(102),
    [sym_text] = ACTIONS(102),
    [sym__number] = ACTIONS(102),
    [sym__fraction] = ACTIONS(102),
    [sym__tight_quantity] = ACTIONS(102),
    [sym__tight_volts] = ACTIONS(102),
    [sym__tight_sets] = ACTIONS(102),
    [sym__tight_trade_size] = ACTIONS(102),
    [sym__tight_size] = ACTIONS(102),
    [sym__tight_dc] = ACTIONS(102),
    [sym__gauge] = ACTIONS(102),
    [sym__tight_run] = ACTIONS(102),
    [sym__run_of] = ACTIONS(102),
    [sym__cable_of] = ACTIONS(102),
    [sym__pair] = ACTIONS(102),
    [sym__short_pair] = ACTIONS(102),
    [sym__tight_short_pair] = ACTIONS(102),
    [sym__band] = ACTIONS(102),
    [sym__range] = ACTIONS(102),
    [sym__list] = ACTIONS(102),
    [sym__date] = ACTIONS(102),
    [sym__poles] = ACTIONS(102),
    [sym__volts] = ACTIONS(110),
    [sym__phases] = ACTIONS(43),
    [sym_name] = ACTIONS(102),
    [sym_legs] = ACTIONS(102),
    [sym_mark] = ACTIONS(102),
    [sym_statement] = ACTIONS(102),
    [sym_kind] = ACTIONS(102),
    [sym_key] = ACTIONS(102),
    [sym_flag] = ACTIONS(102),
    [sym_action] = ACTIONS(102),
    [sym_link] = ACTIONS(102),
    [sym__other] = ACTIONS(102),
  },
  [9] = {
    [ts_builtin_sym_end] = ACTIONS(112),
    [sym_doc] = ACTIONS(114),
    [sym_comment] = ACTIONS(114),
    [sym_port] = ACTIONS(114),
    [sym_text] = ACTIONS(114),
    [sym__number] = ACTIONS(114),
    [sym__fraction] = ACTIONS(114),
    [sym__tight_quantity] = ACTIONS(114),
    [sym__tight_volts] = ACTIONS(114),
    [sym__tight_sets] = ACTIONS(114),
    [sym__tight_trade_size] = ACTIONS(114),
    [sym__tight_size] = ACTIONS(114),
    [sym__tight_dc] = ACTIONS(114),
    [sym__gauge] = ACTIONS(114),
    [sym__tight_run] = ACTIONS(114),
    [sym__run_of] = ACTIONS(114),
    [sym__cable_of] = ACTIONS(114),
    [sym__pair] = ACTIONS(114),
    [sym__short_pair] = ACTIONS(114),
    [sym__tight_short_pair] = ACTIONS(114),
    [sym__band] = ACTIONS(114),
    [sym__range] = ACTIONS(114),
    [sym__list] = ACTIONS(114),
    [sym__date] = ACTIONS(114),
    [sym__poles] = ACTIONS(114),
    [sym__phases] = ACTIONS(43),
    [sym_name] = ACTIONS(114),
    [sym_legs] = ACTIONS(114),
    [sym_mark] = ACTIONS(114),
    [sym_statement] = ACTIONS(114),
    [sym_kind] = ACTIONS(114),
    [sym_key] = ACTIONS(114),
    [sym_flag] = ACTIONS(114),
    [sym_action] = ACTIONS(114),
    [sym_link] = ACTIONS(114),
    [sym__other] = ACTIONS(114),
  },
  [10] = {
    [ts_builtin_sym_end] = ACTIONS(100),
    [sym_doc] = ACTIONS(102),
    [sym_comment] = ACTIONS(102),
    [sym_port] = ACTIONS(102),
    [sym_text] = ACTIONS(102),
    [sym__number] = ACTIONS(102),
    [sym__fraction] = ACTIONS(102),
    [sym__tight_quantity] = ACTIONS(102),
    [sym__tight_volts] = ACTIONS(102),
    [sym__tight_sets] = ACTIONS(102),
    [sym__tight_trade_size] = ACTIONS(102),
    [sym__tight_size] = ACTIONS(102),
    [sym__tight_dc] = ACTIONS(102),
    [sym__gauge] = ACTIONS(102),
    [sym__tight_run] = ACTIONS(102),
    [sym__run_of] = ACTIONS(102),
    [sym__cable_of] = ACTIONS(102),
    [sym__pair] = ACTIONS(102),
    [sym__short_pair] = ACTIONS(102),
    [sym__tight_short_pair] = ACTIONS(102),
    [sym__band] = ACTIONS(102),
    [sym__range] = ACTIONS(102),
    [sym__list] = ACTIONS(102),
    [sym__date] = ACTIONS(102),
    [sym__poles] = ACTIONS(102),
    [sym__kilovolts] = ACTIONS(108),
    [sym_name] = ACTIONS(102),
    [sym_legs] = ACTIONS(102),
    [sym_mark] = ACTIONS(102),
    [sym_statement] = ACTIONS(102),
    [sym_kind] = ACTIONS(102),
    [sym_key] = ACTIONS(102),
    [sym_flag] = ACTIONS(102),
    [sym_action] = ACTIONS(102),
    [sym_link] = ACTIONS(102),
    [sym__other] = ACTIONS(102),
  },
  [11] = {
    [ts_builtin_sym_end] = ACTIONS(100),
    [sym_doc] = ACTIONS(102),
    [sym_comment] = ACTIONS(102),
    [sym_port] = ACTIONS(102),
    [sym_text] = ACTIONS(102),
    [sym__number] = ACTIONS(102),
    [sym__fraction] = ACTIONS(102),
    [sym__tight_quantity] = ACTIONS(102),
    [sym__tight_volts] = ACTIONS(102),
    [sym__tight_sets] = ACTIONS(102),
    [sym__tight_trade_size] = ACTIONS(102),
    [sym__tight_size] = ACTIONS(102),
    [sym__tight_dc] = ACTIONS(102),
    [sym__gauge] = ACTIONS(102),
    [sym__tight_run] = ACTIONS(102),
    [sym__run_of] = ACTIONS(102),
    [sym__cable_of] = ACTIONS(102),
    [sym__pair] = ACTIONS(102),
    [sym__short_pair] = ACTIONS(102),
    [sym__tight_short_pair] = ACTIONS(102),
    [sym__band] = ACTIONS(102),
    [sym__range] = ACTIONS(102),
    [sym__list] = ACTIONS(102),
    [sym__date] = ACTIONS(102),
    [sym__poles] = ACTIONS(102),
    [sym__area] = ACTIONS(47),
    [sym_name] = ACTIONS(102),
    [sym_legs] = ACTIONS(102),
    [sym_mark] = ACTIONS(102),
    [sym_statement] = ACTIONS(102),
    [sym_kind] = ACTIONS(102),
    [sym_key] = ACTIONS(102),
    [sym_flag] = ACTIONS(102),
    [sym_action] = ACTIONS(102),
    [sym_link] = ACTIONS(102),
    [sym__other] = ACTIONS(102),
  },
  [12] = {
    [ts_builtin_sym_end] = ACTIONS(100),
    [sym_doc] = ACTIONS(102),
    [sym_comment] = ACTIONS(102),
    [sym_port] = ACTIONS(102),
    [sym_text] = ACTIONS(102),
    [sym__number] = ACTIONS(102),
    [sym__fraction] = ACTIONS(102),
    [sym__tight_quantity] = ACTIONS(102),
    [sym__tight_volts] = ACTIONS(102),
    [sym__tight_sets] = ACTIONS(102),
    [sym__tight_trade_size] = ACTIONS(102),
    [sym__tight_size] = ACTIONS(102),
    [sym__tight_dc] = ACTIONS(102),
    [sym__gauge] = ACTIONS(102),
    [sym__tight_run] = ACTIONS(102),
    [sym__run_of] = ACTIONS(102),
    [sym__cable_of] = ACTIONS(102),
    [sym__pair] = ACTIONS(102),
    [sym__short_pair] = ACTIONS(102),
    [sym__tight_short_pair] = ACTIONS(102),
    [sym__band] = ACTIONS(102),
    [sym__range] = ACTIONS(102),
    [sym__list] = ACTIONS(102),
    [sym__date] = ACTIONS(102),
    [sym__poles] = ACTIONS(102),
    [sym__square_mm] = ACTIONS(47),
    [sym_name] = ACTIONS(102),
    [sym_legs] = ACTIONS(102),
    [sym_mark] = ACTIONS(102),
    [sym_statement] = ACTIONS(102),
    [sym_kind] = ACTIONS(102),
    [sym_key] = ACTIONS(102),
    [sym_flag] = ACTIONS(102),
    [sym_action] = ACTIONS(102),
    [sym_link] = ACTIONS(102),
    [sym__other] = ACTIONS(102),
  },
  [13] = {
    [ts_builtin_sym_end] = ACTIONS(116),
    [sym_doc] = ACTIONS(118),
    [sym_comment] = ACTIONS(118),
    [sym_port] = ACTIONS(118),
    [sym_text] = ACTIONS(118),
    [sym__number] = ACTIONS(118),
    [sym__fraction] = ACTIONS(118),
    [sym__tight_quantity] = ACTIONS(118),
    [sym__tight_volts] = ACTIONS(118),
    [sym__tight_sets] = ACTIONS(118),
    [sym__tight_trade_size] = ACTIONS(118),
    [sym__tight_size] = ACTIONS(118),
    [sym__tight_dc] = ACTIONS(118),
    [sym__gauge] = ACTIONS(118),
    [sym__tight_run] = ACTIONS(118),
    [sym__run_of] = ACTIONS(118),
    [sym__cable_of] = ACTIONS(118),
    [sym__pair] = ACTIONS(118),
    [sym__short_pair] = ACTIONS(118),
    [sym__tight_short_pair] = ACTIONS(118),
    [sym__band] = ACTIONS(118),
    [sym__range] = ACTIONS(118),
    [sym__list] = ACTIONS(118),
    [sym__date] = ACTIONS(118),
    [sym__poles] = ACTIONS(118),
    [sym__phases] = ACTIONS(120),
    [sym_name] = ACTIONS(118),
    [sym_legs] = ACTIONS(118),
    [sym_mark] = ACTIONS(118),
    [sym_statement] = ACTIONS(118),
    [sym_kind] = ACTIONS(118),
    [sym_key] = ACTIONS(118),
    [sym_flag] = ACTIONS(118),
    [sym_action] = ACTIONS(118),
    [sym_link] = ACTIONS(118),
    [sym__other] = ACTIONS(118),
  },
  [14] = {
    [ts_builtin_sym_end] = ACTIONS(122),
    [sym_doc] = ACTIONS(124),
    [sym_comment] = ACTIONS(124),
    [sym_port] = ACTIONS(124),
    [sym_text] = ACTIONS(124),
    [sym__number] = ACTIONS(124),
    [sym__fraction] = ACTIONS(124),
    [sym__tight_quantity] = ACTIONS(124),
    [sym__tight_volts] = ACTIONS(124),
    [sym__tight_sets] = ACTIONS(124),
    [sym__tight_trade_size] = ACTIONS(124),
    [sym__tight_size] = ACTIONS(124),
    [sym__tight_dc] = ACTIONS(124),
    [sym__gauge] = ACTIONS(124),
    [sym__tight_run] = ACTIONS(124),
    [sym__run_of] = ACTIONS(124),
    [sym__cable_of] = ACTIONS(124),
    [sym__pair] = ACTIONS(124),
    [sym__short_pair] = ACTIONS(124),
    [sym__tight_short_pair] = ACTIONS(124),
    [sym__band] = ACTIONS(124),
    [sym__range] = ACTIONS(124),
    [sym__list] = ACTIONS(124),
    [sym__date] = ACTIONS(124),
    [sym__poles] = ACTIONS(124),
    [sym__phases] = ACTIONS(120),
    [sym_name] = ACTIONS(124),
    [sym_legs] = ACTIONS(124),
    [sym_mark] = ACTIONS(124),
    [sym_statement] = ACTIONS(124),
    [sym_kind] = ACTIONS(124),
    [sym_key] = ACTIONS(124),
    [sym_flag] = ACTIONS(124),
    [sym_action] = ACTIONS(124),
    [sym_link] = ACTIONS(124),
    [sym__other] = ACTIONS(124),
  },
  [15] = {
    [ts_builtin_sym_end] = ACTIONS(126),
    [sym_doc] = ACTIONS(128),
    [sym_comment] = ACTIONS(128),
    [sym_port] = ACTIONS(128),
    [sym_text] = ACTIONS(128),
    [sym__number] = ACTIONS(128),
    [sym__fraction] = ACTIONS(128),
    [sym__tight_quantity] = ACTIONS(128),
    [sym__tight_volts] = ACTIONS(128),
    [sym__tight_sets] = ACTIONS(128),
    [sym__tight_trade_size] = ACTIONS(128),
    [sym__tight_size] = ACTIONS(128),
    [sym__tight_dc] = ACTIONS(128),
    [sym__gauge] = ACTIONS(128),
    [sym__tight_run] = ACTIONS(128),
    [sym__run_of] = ACTIONS(128),
    [sym__cable_of] = ACTIONS(128),
    [sym__pair] = ACTIONS(128),
    [sym__short_pair] = ACTIONS(128),
    [sym__tight_short_pair] = ACTIONS(128),
    [sym__band] = ACTIONS(128),
    [sym__range] = ACTIONS(128),
    [sym__list] = ACTIONS(128),
    [sym__date] = ACTIONS(128),
    [sym__poles] = ACTIONS(128),
    [sym_name] = ACTIONS(128),
    [sym_legs] = ACTIONS(128),
    [sym_mark] = ACTIONS(128),
    [sym_statement] = ACTIONS(128),
    [sym_kind] = ACTIONS(128),
    [sym_key] = ACTIONS(128),
    [sym_flag] = ACTIONS(128),
    [sym_action] = ACTIONS(128),
    [sym_link] = ACTIONS(128),
    [sym__other] = ACTIONS(128),
  },
  [16] = {
    [ts_builtin_sym_end] = ACTIONS(104),
    [sym_doc] = ACTIONS(106),
    [sym_comment] = ACTIONS(106),
    [sym_port] = ACTIONS(106),
    [sym_text] = ACTIONS(106),
    [sym__number] = ACTIONS(106),
    [sym__fraction] = ACTIONS(106),
    [sym__tight_quantity] = ACTIONS(106),
    [sym__tight_volts] = ACTIONS(106),
    [sym__tight_sets] = ACTIONS(106),
    [sym__tight_trade_size] = ACTIONS(106),
    [sym__tight_size] = ACTIONS(106),
    [sym__tight_dc] = ACTIONS(106),
    [sym__gauge] = ACTIONS(106),
    [sym__tight_run] = ACTIONS(106),
    [sym__run_of] = ACTIONS(106),
    [sym__cable_of] = ACTIONS(106),
    [sym__pair] = ACTIONS(106),
    [sym__short_pair] = ACTIONS(106),
    [sym__tight_short_pair] = ACTIONS(106),
    [sym__band] = ACTIONS(106),
    [sym__range] = ACTIONS(106),
    [sym__list] = ACTIONS(106),
    [sym__date] = ACTIONS(106),
    [sym__poles] = ACTIONS(106),
    [sym_name] = ACTIONS(106),
    [sym_legs] = ACTIONS(106),
    [sym_mark] = ACTIONS(106),
    [sym_statement] = ACTIONS(106),
    [sym_kind] = ACTIONS(106),
    [sym_key] = ACTIONS(106),
    [sym_flag] = ACTIONS(106),
    [sym_action] = ACTIONS(106),
    [sym_link] = ACTIONS(106),
    [sym__other] = ACTIONS(106),
  },
  [17] = {
    [ts_builtin_sym_end] = ACTIONS(35),
    [sym_doc] = ACTIONS(37),
    [sym_comment] = ACTIONS(37),
    [sym_port] = ACTIONS(37),
    [sym_text] = ACTIONS(37),
    [sym__number] = ACTIONS(37),
    [sym__fraction] = ACTIONS(37),
    [sym__tight_quantity] = ACTIONS(37),
    [sym__tight_volts] = ACTIONS(37),
    [sym__tight_sets] = ACTIONS(37),
    [sym__tight_trade_size] = ACTIONS(37),
    [sym__tight_size] = ACTIONS(37),
    [sym__tight_dc] = ACTIONS(37),
    [sym__gauge] = ACTIONS(37),
    [sym__tight_run] = ACTIONS(37),
    [sym__run_of] = ACTIONS(37),
    [sym__cable_of] = ACTIONS(37),
    [sym__pair] = ACTIONS(37),
    [sym__short_pair] = ACTIONS(37),
    [sym__tight_short_pair] = ACTIONS(37),
    [sym__band] = ACTIONS(37),
    [sym__range] = ACTIONS(37),
    [sym__list] = ACTIONS(37),
    [sym__date] = ACTIONS(37),
    [sym__poles] = ACTIONS(37),
    [sym_name] = ACTIONS(37),
    [sym_legs] = ACTIONS(37),
    [sym_mark] = ACTIONS(37),
    [sym_statement] = ACTIONS(37),
    [sym_kind] = ACTIONS(37),
    [sym_key] = ACTIONS(37),
    [sym_flag] = ACTIONS(37),
    [sym_action] = ACTIONS(37),
    [sym_link] = ACTIONS(37),
    [sym__other] = ACTIONS(37),
  },
  [18] = {
    [ts_builtin_sym_end] = ACTIONS(112),
    [sym_doc] = ACTIONS(114),
    [sym_comment] = ACTIONS(114),
    [sym_port] = ACTIONS(114),
    [sym_text] = ACTIONS(114),
    [sym__number] = ACTIONS(114),
    [sym__fraction] = ACTIONS(114),
    [sym__tight_quantity] = ACTIONS(114),
    [sym__tight_volts] = ACTIONS(114),
    [sym__tight_sets] = ACTIONS(114),
    [sym__tight_trade_size] = ACTIONS(114),
    [sym__tight_size] = ACTIONS(114),
    [sym__tight_dc] = ACTIONS(114),
    [sym__gauge] = ACTIONS(114),
    [sym__tight_run] = ACTIONS(114),
    [sym__run_of] = ACTIONS(114),
    [sym__cable_of] = ACTIONS(114),
    [sym__pair] = ACTIONS(114),
    [sym__short_pair] = ACTIONS(114),
    [sym__tight_short_pair] = ACTIONS(114),
    [sym__band] = ACTIONS(114),
    [sym__range] = ACTIONS(114),
    [sym__list] = ACTIONS(114),
    [sym__date] = ACTIONS(114),
    [sym__poles] = ACTIONS(114),
    [sym_name] = ACTIONS(114),
    [sym_legs] = ACTIONS(114),
    [sym_mark] = ACTIONS(114),
    [sym_statement] = ACTIONS(114),
    [sym_kind] = ACTIONS(114),
    [sym_key] = ACTIONS(114),
    [sym_flag] = ACTIONS(114),
    [sym_action] = ACTIONS(114),
    [sym_link] = ACTIONS(114),
    [sym__other] = ACTIONS(114),
  },
  [19] = {
    [ts_builtin_sym_end] = ACTIONS(100),
    [sym_doc] = ACTIONS(102),
    [sym_comment] = ACTIONS(102),
    [sym_port] = ACTIONS(102),
    [sym_text] = ACTIONS(102),
    [sym__number] = ACTIONS(102),
    [sym__fraction] = ACTIONS(102),
    [sym__tight_quantity] = ACTIONS(102),
    [sym__tight_volts] = ACTIONS(102),
    [sym__tight_sets] = ACTIONS(102),
    [sym__tight_trade_size] = ACTIONS(102),
    [sym__tight_size] = ACTIONS(102),
    [sym__tight_dc] = ACTIONS(102),
    [sym__gauge] = ACTIONS(102),
    [sym__tight_run] = ACTIONS(102),
    [sym__run_of] = ACTIONS(102),
    [sym__cable_of] = ACTIONS(102),
    [sym__pair] = ACTIONS(102),
    [sym__short_pair] = ACTIONS(102),
    [sym__tight_short_pair] = ACTIONS(102),
    [sym__band] = ACTIONS(102),
    [sym__range] = ACTIONS(102),
    [sym__list] = ACTIONS(102),
    [sym__date] = ACTIONS(102),
    [sym__poles] = ACTIONS(102),
    [sym_name] = ACTIONS(102),
    [sym_legs] = ACTIONS(102),
    [sym_mark] = ACTIONS(102),
    [sym_statement] = ACTIONS(102),
    [sym_kind] = ACTIONS(102),
    [sym_key] = ACTIONS(102),
    [sym_flag] = ACTIONS(102),
    [sym_action] = ACTIONS(102),
    [sym_link] = ACTIONS(102),
    [sym__other] = ACTIONS(102),
  },
  [20] = {
    [ts_builtin_sym_end] = ACTIONS(122),
    [sym_doc] = ACTIONS(124),
    [sym_comment] = ACTIONS(124),
    [sym_port] = ACTIONS(124),
    [sym_text] = ACTIONS(124),
    [sym__number] = ACTIONS(124),
    [sym__fraction] = ACTIONS(124),
    [sym__tight_quantity] = ACTIONS(124),
    [sym__tight_volts] = ACTIONS(124),
    [sym__tight_sets] = ACTIONS(124),
    [sym__tight_trade_size] = ACTIONS(124),
    [sym__tight_size] = ACTIONS(124),
    [sym__tight_dc] = ACTIONS(124),
    [sym__gauge] = ACTIONS(124),
    [sym__tight_run] = ACTIONS(124),
    [sym__run_of] = ACTIONS(124),
    [sym__cable_of] = ACTIONS(124),
    [sym__pair] = ACTIONS(124),
    [sym__short_pair] = ACTIONS(124),
    [sym__tight_short_pair] = ACTIONS(124),
    [sym__band] = ACTIONS(124),
    [sym__range] = ACTIONS(124),
    [sym__list] = ACTIONS(124),
    [sym__date] = ACTIONS(124),
    [sym__poles] = ACTIONS(124),
    [sym_name] = ACTIONS(124),
    [sym_legs] = ACTIONS(124),
    [sym_mark] = ACTIONS(124),
    [sym_statement] = ACTIONS(124),
    [sym_kind] = ACTIONS(124),
    [sym_key] = ACTIONS(124),
    [sym_flag] = ACTIONS(124),
    [sym_action] = ACTIONS(124),
    [sym_link] = ACTIONS(124),
    [sym__other] = ACTIONS(124),
  },
  [21] = {
    [ts_builtin_sym_end] = ACTIONS(116),
    [sym_doc] = ACTIONS(118),
    [sym_comment] = ACTIONS(118),
    [sym_port] = ACTIONS(118),
    [sym_text] = ACTIONS(118),
    [sym__number] = ACTIONS(118),
    [sym__fraction] = ACTIONS(118),
    [sym__tight_quantity] = ACTIONS(118),
    [sym__tight_volts] = ACTIONS(118),
    [sym__tight_sets] = ACTIONS(118),
    [sym__tight_trade_size] = ACTIONS(118),
    [sym__tight_size] = ACTIONS(118),
    [sym__tight_dc] = ACTIONS(118),
    [sym__gauge] = ACTIONS(118),
    [sym__tight_run] = ACTIONS(118),
    [sym__run_of] = ACTIONS(118),
    [sym__cable_of] = ACTIONS(118),
    [sym__pair] = ACTIONS(118),
    [sym__short_pair] = ACTIONS(118),
    [sym__tight_short_pair] = ACTIONS(118),
    [sym__band] = ACTIONS(118),
    [sym__range] = ACTIONS(118),
    [sym__list] = ACTIONS(118),
    [sym__date] = ACTIONS(118),
    [sym__poles] = ACTIONS(118),
    [sym_name] = ACTIONS(118),
    [sym_legs] = ACTIONS(118),
    [sym_mark] = ACTIONS(118),
    [sym_statement] = ACTIONS(118),
    [sym_kind] = ACTIONS(118),
    [sym_key] = ACTIONS(118),
    [sym_flag] = ACTIONS(118),
    [sym_action] = ACTIONS(118),
    [sym_link] = ACTIONS(118),
    [sym__other] = ACTIONS(118),
  },
  [22] = {
    [ts_builtin_sym_end] = ACTIONS(130),
    [sym_doc] = ACTIONS(132),
    [sym_comment] = ACTIONS(132),
    [sym_port] = ACTIONS(132),
    [sym_text] = ACTIONS(132),
    [sym__number] = ACTIONS(132),
    [sym__fraction] = ACTIONS(132),
    [sym__tight_quantity] = ACTIONS(132),
    [sym__tight_volts] = ACTIONS(132),
    [sym__tight_sets] = ACTIONS(132),
    [sym__tight_trade_size] = ACTIONS(132),
    [sym__tight_size] = ACTIONS(132),
    [sym__tight_dc] = ACTIONS(132),
    [sym__gauge] = ACTIONS(132),
    [sym__tight_run] = ACTIONS(132),
    [sym__run_of] = ACTIONS(132),
    [sym__cable_of] = ACTIONS(132),
    [sym__pair] = ACTIONS(132),
    [sym__short_pair] = ACTIONS(132),
    [sym__tight_short_pair] = ACTIONS(132),
    [sym__band] = ACTIONS(132),
    [sym__range] = ACTIONS(132),
    [sym__list] = ACTIONS(132),
    [sym__date] = ACTIONS(132),
    [sym__poles] = ACTIONS(132),
    [sym_name] = ACTIONS(132),
    [sym_legs] = ACTIONS(132),
    [sym_mark] = ACTIONS(132),
    [sym_statement] = ACTIONS(132),
    [sym_kind] = ACTIONS(132),
    [sym_key] = ACTIONS(132),
    [sym_flag] = ACTIONS(132),
    [sym_action] = ACTIONS(132),
    [sym_link] = ACTIONS(132),
    [sym__other] = ACTIONS(132),
  },
  [23] = {
    [ts_builtin_sym_end] = ACTIONS(134),
    [sym_doc] = ACTIONS(136),
    [sym_comment] = ACTIONS(136),
    [sym_port] = ACTIONS(136),
    [sym_text] = ACTIONS(136),
    [sym__number] = ACTIONS(136),
    [sym__fraction] = ACTIONS(136),
    [sym__tight_quantity] = ACTIONS(136),
    [sym__tight_volts] = ACTIONS(136),
    [sym__tight_sets] = ACTIONS(136),
    [sym__tight_trade_size] = ACTIONS(136),
    [sym__tight_size] = ACTIONS(136),
    [sym__tight_dc] = ACTIONS(136),
    [sym__gauge] = ACTIONS(136),
    [sym__tight_run] = ACTIONS(136),
    [sym__run_of] = ACTIONS(136),
    [sym__cable_of] = ACTIONS(136),
    [sym__pair] = ACTIONS(136),
    [sym__short_pair] = ACTIONS(136),
    [sym__tight_short_pair] = ACTIONS(136),
    [sym__band] = ACTIONS(136),
    [sym__range] = ACTIONS(136),
    [sym__list] = ACTIONS(136),
    [sym__date] = ACTIONS(136),
    [sym__poles] = ACTIONS(136),
    [sym_name] = ACTIONS(136),
    [sym_legs] = ACTIONS(136),
    [sym_mark] = ACTIONS(136),
    [sym_statement] = ACTIONS(136),
    [sym_kind] = ACTIONS(136),
    [sym_key] = ACTIONS(136),
    [sym_flag] = ACTIONS(136),
    [sym_action] = ACTIONS(136),
    [sym_link] = ACTIONS(136),
    [sym__other] = ACTIONS(136),
  },
  [24] = {
    [ts_builtin_sym_end] = ACTIONS(138),
    [sym_doc] = ACTIONS(140),
    [sym_comment] = ACTIONS(140),
    [sym_port] = ACTIONS(140),
    [sym_text] = ACTIONS(140),
    [sym__number] = ACTIONS(140),
    [sym__fraction] = ACTIONS(140),
    [sym__tight_quantity] = ACTIONS(140),
    [sym__tight_volts] = ACTIONS(140),
    [sym__tight_sets] = ACTIONS(140),
    [sym__tight_trade_size] = ACTIONS(140),
    [sym__tight_size] = ACTIONS(140),
    [sym__tight_dc] = ACTIONS(140),
    [sym__gauge] = ACTIONS(140),
    [sym__tight_run] = ACTIONS(140),
    [sym__run_of] = ACTIONS(140),
    [sym__cable_of] = ACTIONS(140),
    [sym__pair] = ACTIONS(140),
    [sym__short_pair] = ACTIONS(140),
    [sym__tight_short_pair] = ACTIONS(140),
    [sym__band] = ACTIONS(140),
    [sym__range] = ACTIONS(140),
    [sym__list] = ACTIONS(140),
    [sym__date] = ACTIONS(140),
    [sym__poles] = ACTIONS(140),
    [sym_name] = ACTIONS(140),
    [sym_legs] = ACTIONS(140),
    [sym_mark] = ACTIONS(140),
    [sym_statement] = ACTIONS(140),
    [sym_kind] = ACTIONS(140),
    [sym_key] = ACTIONS(140),
    [sym_flag] = ACTIONS(140),
    [sym_action] = ACTIONS(140),
    [sym_link] = ACTIONS(140),
    [sym__other] = ACTIONS(140),
  },
};

static const uint16_t ts_small_parse_table[] = {
  [0] = 1,
    ACTIONS(142), 1,
      ts_builtin_sym_end,
  [4] = 1,
    ACTIONS(144), 1,
      sym__phases,
};

static const uint32_t ts_small_parse_table_map[] = {
  [SMALL_STATE(25)] = 0,
  [SMALL_STATE(26)] = 4,
};

static const TSParseActionEntry ts_parse_actions[] = {
  [0] = {.entry = {.count = 0, .reusable = false}},
  [1] = {.entry = {.count = 1, .reusable = false}}, RECOVER(),
  [3] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_model, 0, 0, 0),
  [5] = {.entry = {.count = 1, .reusable = false}}, SHIFT(4),
  [7] = {.entry = {.count = 1, .reusable = false}}, SHIFT(2),
  [9] = {.entry = {.count = 1, .reusable = false}}, SHIFT(5),
  [11] = {.entry = {.count = 1, .reusable = false}}, SHIFT(18),
  [13] = {.entry = {.count = 1, .reusable = false}}, SHIFT(9),
  [15] = {.entry = {.count = 1, .reusable = false}}, SHIFT(17),
  [17] = {.entry = {.count = 1, .reusable = false}}, SHIFT(15),
  [19] = {.entry = {.count = 1, .reusable = false}}, SHIFT(16),
  [21] = {.entry = {.count = 1, .reusable = false}}, SHIFT(11),
  [23] = {.entry = {.count = 1, .reusable = false}}, SHIFT(12),
  [25] = {.entry = {.count = 1, .reusable = false}}, SHIFT(6),
  [27] = {.entry = {.count = 1, .reusable = false}}, SHIFT(10),
  [29] = {.entry = {.count = 1, .reusable = false}}, SHIFT(8),
  [31] = {.entry = {.count = 1, .reusable = false}}, SHIFT(7),
  [33] = {.entry = {.count = 1, .reusable = false}}, SHIFT(19),
  [35] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_count, 1, 0, 0),
  [37] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_count, 1, 0, 0),
  [39] = {.entry = {.count = 1, .reusable = false}}, SHIFT(20),
  [41] = {.entry = {.count = 1, .reusable = false}}, SHIFT(14),
  [43] = {.entry = {.count = 1, .reusable = false}}, SHIFT(21),
  [45] = {.entry = {.count = 1, .reusable = false}}, SHIFT(22),
  [47] = {.entry = {.count = 1, .reusable = false}}, SHIFT(23),
  [49] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0),
  [51] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(3),
  [54] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(2),
  [57] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(5),
  [60] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(18),
  [63] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(9),
  [66] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(17),
  [69] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(15),
  [72] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(16),
  [75] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(11),
  [78] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(12),
  [81] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(6),
  [84] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(10),
  [87] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(8),
  [90] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(7),
  [93] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_model_repeat1, 2, 0, 0), SHIFT_REPEAT(19),
  [96] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_model, 1, 0, 0),
  [98] = {.entry = {.count = 1, .reusable = false}}, SHIFT(3),
  [100] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_other, 1, 0, 0),
  [102] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_other, 1, 0, 0),
  [104] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_voltage, 1, 0, 0),
  [106] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_voltage, 1, 0, 0),
  [108] = {.entry = {.count = 1, .reusable = false}}, SHIFT(13),
  [110] = {.entry = {.count = 1, .reusable = false}}, SHIFT(26),
  [112] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_quantity, 1, 0, 0),
  [114] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_quantity, 1, 0, 0),
  [116] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_voltage, 2, 0, 0),
  [118] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_voltage, 2, 0, 0),
  [120] = {.entry = {.count = 1, .reusable = false}}, SHIFT(24),
  [122] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_quantity, 2, 0, 0),
  [124] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_quantity, 2, 0, 0),
  [126] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_conductor, 1, 0, 0),
  [128] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_conductor, 1, 0, 0),
  [130] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_count, 2, 0, 0),
  [132] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_count, 2, 0, 0),
  [134] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_conductor, 2, 0, 0),
  [136] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_conductor, 2, 0, 0),
  [138] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_voltage, 3, 0, 0),
  [140] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_voltage, 3, 0, 0),
  [142] = {.entry = {.count = 1, .reusable = true}},  ACCEPT_INPUT(),
  [144] = {.entry = {.count = 1, .reusable = true}}, SHIFT(24),
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

TS_PUBLIC const TSLanguage *tree_sitter_wye(void) {
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
    .symbol_metadata = ts_symbol_metadata,
    .public_symbol_map = ts_symbol_map,
    .alias_map = ts_non_terminal_alias_map,
    .alias_sequences = &ts_alias_sequences[0][0],
    .lex_modes = ts_lex_modes,
    .lex_fn = ts_lex,
    .primary_state_ids = ts_primary_state_ids,
  };
  return &language;
}
#ifdef __cplusplus
}
#endif
