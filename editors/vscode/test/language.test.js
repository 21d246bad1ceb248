"use strict";

const assert = require("node:assert/strict");
const fs = require("node:fs");
const path = require("node:path");
const test = require("node:test");

const root = path.join(__dirname, "../../..");
const language = JSON.parse(fs.readFileSync(path.join(__dirname, "../language-configuration.json"), "utf8"));
const tables = JSON.parse(fs.readFileSync(path.join(root, "editors/grammar/tables.json"), "utf8"));
const words = (line) => line.match(new RegExp(language.wordPattern.pattern, "g"));

/** Every .downlead file under a folder. */
function* examples(folder) {
  for (const entry of fs.readdirSync(folder, { withFileTypes: true })) {
    const file = path.join(folder, entry.name);
    if (entry.isDirectory()) yield* examples(file);
    else if (file.endsWith(".downlead")) yield file;
  }
}

test("what a double click selects", () => {
  assert.deepEqual(words("DU1.high"), ["DU1.high"]);
  assert.deepEqual(words("on 2m, 70cm, guess"), ["on", "2m", "70cm", "guess"]);
  assert.deepEqual(words("46 m ± 0.5 m of 7-16-pair"), ["46", "m", "±", "0.5", "m", "of", "7-16-pair"]);
  assert.deepEqual(words("-119 dBm, 10 °C, 50 %"), ["-119", "dBm", "10", "°C", "50", "%"]);
  assert.deepEqual(words("1.7241e-8 ohm-m, 5 Ω"), ["1.7241e-8", "ohm-m", "5", "Ω"]);
  assert.deepEqual(words("loss-tangent 0.0002"), ["loss-tangent", "0.0002"]);
  assert.deepEqual(words("a - b"), ["a", "b"]);
  assert.deepEqual(words("since 2026-07-04 with W1"), ["since", "2026-07-04", "with", "W1"]);
});

test("every keyword, word and unit without a slash is one word", () => {
  const simple = tables.unit_symbols.filter((s) => !s.includes("/"));
  for (const word of [...tables.inner_words, ...simple]) assert.deepEqual(words(`1 ${word}`), ["1", word]);
});

test("the rules indent every example as it is", () => {
  const more = new RegExp(language.indentationRules.increaseIndentPattern.pattern);
  const less = new RegExp(language.indentationRules.decreaseIndentPattern.pattern);
  let lines = 0;
  for (const folder of ["examples", "crates/catalogue/library"]) {
    for (const file of examples(path.join(root, folder))) {
      let depth = 0;
      for (const [i, line] of fs.readFileSync(file, "utf8").split("\n").entries()) {
        if (line.trim() === "") continue;
        if (less.test(line)) depth -= 1;
        assert.equal(line.length - line.trimStart().length, depth * 4, `${file}:${i + 1}`);
        if (more.test(line)) depth += 1;
        lines += 1;
      }
      assert.equal(depth, 0, file);
    }
  }
  assert.ok(lines > 500);
});

test("braces in texts and comments do not indent", () => {
  const more = new RegExp(language.indentationRules.increaseIndentPattern.pattern);
  assert.ok(!more.test('source "a { b"'));
  assert.ok(!more.test("M1 // see {"));
  assert.ok(!more.test("place mast { temperature 10 °C }"));
  assert.ok(more.test('station x "a } b" { // on the hill'));
});
