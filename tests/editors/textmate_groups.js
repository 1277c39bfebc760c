// Reads JSON {grammar, lines}; writes for each line its [start, end, scope] pieces, as VS Code's own engine cuts them,
// and into the file $WYE_TIMES, where it is named, the processor time that each line took, in ms.
const fs = require("fs");
const path = require("path");

async function main() {
  const modules = process.argv[2];
  const { grammar, lines } = JSON.parse(fs.readFileSync(0, "utf8"));
  const oniguruma = require(path.join(modules, "vscode-oniguruma"));
  const textmate = require(path.join(modules, "vscode-textmate"));
  const wasm = fs.readFileSync(path.join(modules, "vscode-oniguruma", "release", "onig.wasm"));
  await oniguruma.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => textmate.parseRawGrammar(fs.readFileSync(grammar, "utf8"), grammar),
  });
  const loaded = await registry.loadGrammar("source.wye");
  let state = textmate.INITIAL;
  const times = [];
  const out = lines.map((line) => {
    const begun = process.cpuUsage();
    const result = loaded.tokenizeLine(line, state);
    const { user, system } = process.cpuUsage(begun);
    times.push((user + system) / 1e3);
    state = result.ruleStack;
    return result.tokens.map((token) => [token.startIndex, token.endIndex, token.scopes[token.scopes.length - 1]]);
  });
  if (process.env.WYE_TIMES) fs.writeFileSync(process.env.WYE_TIMES, JSON.stringify(times));
  process.stdout.write(JSON.stringify(out));
}

main().catch((error) => {
  console.error(error);
  process.exit(1);
});
