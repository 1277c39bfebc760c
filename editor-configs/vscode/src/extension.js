// The Wyeline extension: starts the language server, restarts it when its settings change, and says plainly what to do
// when it is not there. Everything it shows about a model comes from the server.
"use strict";

const vscode = require("vscode");
const { LanguageClient, State } = require("vscode-languageclient/node");
const { executeCommand } = require("./ask");
const { findServer } = require("./find_server");

const INSTALL = "pip install /path/to/wyeline";

/** @type {import("vscode-languageclient/node").LanguageClient | undefined} */
let client;
/** @type {vscode.LogOutputChannel} */
let log;
/** @type {vscode.LanguageStatusItem} */
let status;
/** One start or stop at a time, in the order in which they were asked for. */
let turn = Promise.resolve();

/** @param {() => Promise<void>} work */
function inTurn(work) {
  turn = turn.then(work, work).catch((error) => log.error(String(error?.stack ?? error)));
  return turn;
}

function serverSettings() {
  const settings = vscode.workspace.getConfiguration("wyeline");
  return {
    command: String(settings.get("server.command") ?? "").trim(),
    arguments: /** @type {string[]} */ (settings.get("server.arguments") ?? []),
  };
}

/** @param {string} text @param {vscode.LanguageStatusSeverity} severity @param {boolean} busy */
function show(text, severity = vscode.LanguageStatusSeverity.Information, busy = false) {
  status.text = text;
  status.severity = severity;
  status.busy = busy;
}

/** @param {string[]} looked */
async function tellMissing(looked) {
  const install = `Copy "${INSTALL}"`;
  const settings = "Open Settings";
  log.warn(`No wyeline-server. Looked at:\n${looked.map((file) => `  ${file}`).join("\n")}`);
  show("Wyeline: no server", vscode.LanguageStatusSeverity.Error);
  const chosen = await vscode.window.showErrorMessage(
    `Wyeline's language server was not found in the workspace's virtual environment (.venv, venv) or on the PATH, so only ` +
      `colours work. Install it with "${INSTALL}", or name it in the setting wyeline.server.command. Then run ` +
      `"Wyeline: Restart the Language Server".`,
    install,
    settings,
  );
  if (chosen === install) await vscode.env.clipboard.writeText(INSTALL);
  if (chosen === settings) await vscode.commands.executeCommand("workbench.action.openSettings", "wyeline.server");
}

async function start() {
  if (!vscode.workspace.isTrusted) {
    show("Wyeline: waits for trust in this workspace", vscode.LanguageStatusSeverity.Warning);
    return;
  }
  const folders = (vscode.workspace.workspaceFolders ?? [])
    .filter((folder) => folder.uri.scheme === "file")
    .map((folder) => folder.uri.fsPath);
  const wanted = serverSettings();
  const { command, looked } = findServer(wanted.command, folders, process.env.PATH ?? "");
  if (!command) {
    void tellMissing(looked); // the message stays open; a restart must not wait for its answer
    return;
  }
  show("Wyeline: starting", vscode.LanguageStatusSeverity.Information, true);
  log.info(`Starting ${[command, ...wanted.arguments].join(" ")}`);
  const options = { command, args: wanted.arguments, options: folders[0] ? { cwd: folders[0] } : {} };
  const started = new LanguageClient("wyeline", "Wyeline", options, {
    documentSelector: [
      { language: "wye", scheme: "file" },
      { language: "wye", scheme: "untitled" },
    ],
    outputChannel: log,
    synchronize: { configurationSection: "wyeline" },
    markdown: { isTrusted: false, supportHtml: false },
    middleware: { executeCommand },
  });
  client = started;
  started.onDidChangeState(({ newState }) => {
    if (client !== started) return;
    if (newState === State.Running) show("Wyeline");
    if (newState === State.Stopped) show("Wyeline: stopped", vscode.LanguageStatusSeverity.Error);
  });
  try {
    await started.start();
  } catch (error) {
    client = undefined;
    show("Wyeline: the server did not start", vscode.LanguageStatusSeverity.Error);
    log.error(String(error));
    void vscode.window
      .showErrorMessage(`Wyeline's language server did not start: ${command} (${error}).`, "Show Log")
      .then((chosen) => chosen && log.show());
  }
}

async function stop() {
  const running = client;
  client = undefined;
  if (!running) return;
  try {
    await running.dispose(2000);
  } catch (error) {
    log.warn(`The server did not leave in good order: ${error}`);
  }
}

const restart = () =>
  inTurn(async () => {
    await stop();
    await start();
  });

/** @param {vscode.ExtensionContext} context */
async function activate(context) {
  log = vscode.window.createOutputChannel("Wyeline", { log: true });
  status = vscode.languages.createLanguageStatusItem("wyeline.status", { language: "wye" });
  status.name = "Wyeline";
  status.command = { command: "wyeline.showLog", title: "Show Log" };
  context.subscriptions.push(
    log,
    status,
    vscode.commands.registerCommand("wyeline.restart", restart),
    vscode.commands.registerCommand("wyeline.showLog", () => log.show()),
    vscode.workspace.onDidChangeConfiguration((event) => {
      // The server asks for its other settings itself.
      if (event.affectsConfiguration("wyeline.server")) void restart();
    }),
    vscode.workspace.onDidChangeWorkspaceFolders(() => {
      if (!client) void restart();
    }),
    vscode.workspace.onDidGrantWorkspaceTrust(restart),
  );
  await inTurn(start);
}

function deactivate() {
  return inTurn(stop);
}

module.exports = { activate, deactivate };
