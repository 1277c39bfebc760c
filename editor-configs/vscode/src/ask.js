// What a command of the server still lacks when it comes from the command palette, and what is done with its answer.
// A lens or another extension gives every argument itself; those pass through as they are.
"use strict";

const vscode = require("vscode");

/** @typedef {(command: string, args: any[]) => any} Next */

/**
 * Lets the user choose a piece of equipment: any, or what `from` may feed; that in the cursor's line first, so that on
 * a feeder its two ends are what Enter takes.
 * @param {string} document @param {vscode.TextEditor} editor @param {Next} next
 * @param {string} placeHolder @param {string} [from]
 * @returns {Promise<string | undefined>}
 */
async function pick(document, editor, next, placeHolder, from) {
  /** @type {{name: string, kind: string, fits: boolean, reason: string}[]} */
  const partners = (await next("wyeline.partners", from ? [document, from] : [document])) ?? [];
  const words = editor.document.lineAt(editor.selection.active.line).text.split(/[\s,[\]"]+/);
  const named = words.find((word) => word !== from && partners.some((partner) => partner.name === word));
  const here = partners.findIndex((partner) => partner.name === named);
  if (here > 0) partners.unshift(...partners.splice(here, 1));
  const items = partners.map(({ name, kind, fits, reason }) => ({
    label: name, description: from && !fits ? `${kind}: cannot be fed as it is` : kind, detail: reason,
  }));
  return (await vscode.window.showQuickPick(items, { placeHolder, matchOnDescription: true }))?.label;
}

/** @param {string} document @param {vscode.TextEditor} editor @param {Next} next */
async function size(document, editor, next) {
  const name = await pick(document, editor, next, "What shall be sized? Equipment: itself and the feeders at it");
  if (!name) return undefined;
  const found = await next("wyeline.size", [document, name]);
  if (!found?.edit) return found;
  const write = "Write Them";
  const titles = found.sizings.filter((/** @type {any} */ s) => s.edit).map((/** @type {any} */ s) => s.title);
  const chosen = await vscode.window.showInformationMessage(titles.join(". "), write);
  return chosen === write ? next("wyeline.size", [document, name, true]) : found;
}

/** @param {string} document @param {vscode.TextEditor} editor @param {Next} next */
async function connect(document, editor, next) {
  const from = await pick(document, editor, next, "What feeds?");
  const to = from && (await pick(document, editor, next, `What does ${from} feed?`, from));
  if (!to) return undefined;
  const found = await next("wyeline.connect", [document, from, to]);
  if (!found) return found;
  const { refusal, solutions } = found;
  const why = refusal ? `${from} cannot feed ${to} as it stands: ${refusal.why}.` : "";
  if (!solutions.length) {
    void vscode.window.showInformationMessage(why || found.unknown.join("; ") || `${from} can feed ${to}.`);
    return found;
  }
  const items = solutions.map((/** @type {any} */ s, /** @type {number} */ at) => ({
    label: s.title, detail: [s.reason, ...s.left].filter(Boolean).join(" "), number: at + 1,
  }));
  const chosen = await vscode.window.showQuickPick(items, { title: why, placeHolder: "Which change shall be made?" });
  return chosen ? next("wyeline.connect", [document, from, to, chosen.number]) : found;
}

/**
 * Carries out a command of the server, asking for what is not given.
 * @param {string} command @param {any[]} args @param {Next} next
 */
exports.executeCommand = async function executeCommand(command, args, next) {
  const editor = vscode.window.activeTextEditor;
  const given = args.filter((arg) => typeof arg === "string" || typeof arg === "number" || typeof arg === "boolean");
  if (given.length || command === "wyeline.applyEdit") return next(command, args);
  if (editor?.document.languageId !== "wye") {
    void vscode.window.showInformationMessage("Open a Wyeline model first: the command is about the model in the editor.");
    return undefined;
  }
  const document = editor.document.uri.toString();
  if (command === "wyeline.size") return size(document, editor, next);
  if (command === "wyeline.connect") return connect(document, editor, next);
  if (command === "wyeline.workingSheet") {
    const name = await pick(document, editor, next, "Whose figures?");
    return name && next(command, [document, name]);
  }
  return next(command, [document]);
};
