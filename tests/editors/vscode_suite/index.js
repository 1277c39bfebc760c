// Plays the story inside VS Code's extension host, through the `vscode` API, and writes the report.
"use strict";

const fs = require("fs");
const http = require("http");
const vscode = require("vscode");

const report = {};

async function until(what, condition) {
  const end = Date.now() + 60000;
  for (;;) {
    const found = await condition();
    if (found) return found;
    if (Date.now() > end) throw new Error(`waited in vain for ${what}`);
    await new Promise((done) => setTimeout(done, 50));
  }
}

const errors = (uri) =>
  vscode.languages.getDiagnostics(uri).filter((d) => d.severity === vscode.DiagnosticSeverity.Error);

function placeOf(document, line, word) {
  const row = document.getText().split("\n").findIndex((text) => text.startsWith(line));
  return new vscode.Position(row, document.lineAt(row).text.indexOf(word) + 1);
}

const page = (url) => new Promise((done, failed) => {
  http.get(url, (answer) => {
    let text = "";
    answer.on("data", (piece) => (text += piece)).on("end", () => done(text));
  }).on("error", failed);
});

// Commands as the palette runs them: without arguments, about the model in the editor.
async function commands(document) {
  const { url } = await vscode.commands.executeCommand("wyeline.preview");
  if (!(await page(url)).includes(process.env.STORY_PANEL)) throw new Error("the live page does not show the model");
  const { sheets } = await vscode.commands.executeCommand("wyeline.picture");
  if (!sheets.some((sheet) => sheet.svg.includes(process.env.STORY_PANEL))) throw new Error("the picture lacks the panel");
  const given = [document.uri.toString(), process.env.STORY_BOARD];
  const { sizings } = await vscode.commands.executeCommand("wyeline.size", ...given);
  if (!sizings.length) throw new Error("sizing says nothing");
}

async function play() {
  const document = await vscode.workspace.openTextDocument(process.env.STORY_FILE);
  await vscode.window.showTextDocument(document);
  if (document.languageId !== "wye") throw new Error(`language is ${document.languageId}`);
  await until("the finding", () => errors(document.uri).length > 0);
  report.before = errors(document.uri).map((d) => d.message);
  const finding = errors(document.uri)[0];
  report.marked = document.getText(finding.range);

  // What is solved at rest: as a finding, and above the board.
  const solved = await until("the solved finding", () =>
    vscode.languages.getDiagnostics(document.uri).find((d) => d.message.includes("may flow in a fault")));
  const lenses = await until("the fault above the board", async () => {
    const found = await vscode.commands.executeCommand("vscode.executeCodeLensProvider", document.uri);
    const titles = found.map((lens) => lens.command?.title ?? "").filter((title) => title.startsWith("fault"));
    return titles.length > 0 && !titles.some((title) => title.includes("…")) && titles;
  });
  report.solved = [solved.message.split("\n")[0], ...lenses];

  const board = placeOf(document, "switchboard", process.env.STORY_BOARD);
  const hovers = await vscode.commands.executeCommand("vscode.executeHoverProvider", document.uri, board);
  report.hover = hovers.flatMap((hover) => hover.contents.map((part) => part.value ?? part)).join("\n");

  const symbols = await vscode.commands.executeCommand("vscode.executeDocumentSymbolProvider", document.uri);
  report.symbols = (symbols ?? []).map((symbol) => symbol.name);

  const quick = vscode.CodeActionKind.QuickFix.value;
  const actions = await vscode.commands.executeCommand(
    "vscode.executeCodeActionProvider", document.uri, finding.range, quick, 10);
  report.offered = actions.map((action) => action.title);
  if (!actions[0]?.edit) throw new Error("the first quick fix has no edit");
  if (!(await vscode.workspace.applyEdit(actions[0].edit))) throw new Error("the fix was not applied");
  await until("the end of the finding", () => errors(document.uri).length === 0);
  report.after = errors(document.uri).map((d) => d.message);

  await commands(document);

  const panel = placeOf(document, "panel", process.env.STORY_PANEL);
  const rename = await vscode.commands.executeCommand(
    "vscode.executeDocumentRenameProvider", document.uri, panel, process.env.STORY_NEW_PANEL);
  if (!(await vscode.workspace.applyEdit(rename))) throw new Error("the rename was not applied");
  for (const [uri] of rename.entries()) {
    const renamed = await vscode.workspace.openTextDocument(uri);
    await until(`the rename in ${uri.path}`, () => renamed.getText().includes(process.env.STORY_NEW_PANEL));
    if (!(await renamed.save())) throw new Error(`${uri.path} was not saved`);
  }
}

exports.run = async function run() {
  try {
    await play();
  } catch (error) {
    report.problem = String(error.stack ?? error);
    report.diagnostics = vscode.languages.getDiagnostics().map(([uri, list]) => [uri.path, list.map((d) => d.message)]);
    throw error;
  } finally {
    fs.writeFileSync(process.env.STORY_REPORT, JSON.stringify(report));
  }
};
