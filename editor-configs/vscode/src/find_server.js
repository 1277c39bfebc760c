// Where the language server is: the setting, then the workspace's virtual environment, then the PATH.
"use strict";

const fs = require("fs");
const os = require("os");
const path = require("path");

const windows = process.platform === "win32";
const NAME = windows ? "wyeline-server.exe" : "wyeline-server";
const PLACES = [".venv", "venv"].map((folder) => path.join(folder, windows ? "Scripts" : "bin", NAME));

/** @param {string} file */
function runs(file) {
  try {
    fs.accessSync(file, fs.constants.X_OK);
    return fs.statSync(file).isFile();
  } catch {
    return false;
  }
}

/**
 * The server's program, or null with the places that were looked at.
 * @param {string} named the setting wyeline.server.command, perhaps empty
 * @param {string[]} folders the workspace's folders on disk
 * @param {string} searchPath the PATH
 * @returns {{command: string | null, looked: string[]}}
 */
function findServer(named, folders, searchPath) {
  /** @type {string[]} */
  const looked = [];
  const first = (/** @type {string[]} */ files) => {
    looked.push(...files);
    return files.find(runs) ?? null;
  };
  const onPath = (/** @type {string} */ name) =>
    searchPath
      .split(path.delimiter)
      .filter(Boolean)
      .map((folder) => path.join(folder, name));
  if (named) {
    const file = named.replace(/^~(?=[/\\])/, os.homedir());
    if (path.isAbsolute(file)) return { command: first([file]), looked };
    if (/[/\\]/.test(file)) return { command: first(folders.map((folder) => path.join(folder, file))), looked };
    return { command: first(onPath(file)), looked };
  }
  const environments = folders.flatMap((folder) => PLACES.map((place) => path.join(folder, place)));
  return { command: first(environments) ?? first(onPath(NAME)), looked };
}

module.exports = { findServer };
