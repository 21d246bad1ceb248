// Scopes that the TextMate grammar gives: node textmate_tokens.js < [texts as JSON] > [[[line, start, end, scope]…]…]
// The engine is the editor's own (vscode-textmate, vscode-oniguruma), from editors/vscode/node_modules.
"use strict";

const fs = require("node:fs");
const path = require("node:path");
const { createRequire } = require("node:module");

const extension = path.join(__dirname, "../../editors/vscode");
const load = createRequire(path.join(extension, "package.json"));
const { INITIAL, Registry } = load("vscode-textmate");
const oniguruma = load("vscode-oniguruma");

async function main() {
  await oniguruma.loadWASM(fs.readFileSync(load.resolve("vscode-oniguruma/release/onig.wasm")));
  const file = path.join(extension, "syntaxes/downlead.tmLanguage.json");
  const registry = new Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => JSON.parse(fs.readFileSync(file, "utf8")),
  });
  const grammar = await registry.loadGrammar("source.downlead");
  const texts = JSON.parse(fs.readFileSync(0, "utf8"));
  const out = texts.map((text) => {
    const tokens = [];
    let stack = INITIAL;
    text.split(/\r?\n/).forEach((line, number) => {
      const result = grammar.tokenizeLine(line, stack);
      stack = result.ruleStack;
      for (const t of result.tokens) tokens.push([number, t.startIndex, t.endIndex, t.scopes.at(-1)]);
    });
    return tokens;
  });
  process.stdout.write(JSON.stringify(out));
}

main();
