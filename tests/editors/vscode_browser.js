// What both VS Code drivers share: Chromium on a page of the editor's own server on this machine.
"use strict";

const path = require("path");
const { chromium } = require(path.join(process.env.STORY_MODULES, "playwright-core"));

exports.browse = async function browse() {
  const browser = await chromium.launch({
    executablePath: process.env.STORY_CHROMIUM,
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
      "--disable-component-update", "--disable-sync"],
  });
  const page = await browser.newPage({ viewport: { width: 1400, height: 800 } });
  return { browser, page };
};
