// Reads a report, or a preview, in Chromium as a drafter would, and writes what it saw. Paths come in the environment.
"use strict";

const fs = require("fs");
const path = require("path");
const { pathToFileURL } = require("url");
const { browse } = require("./vscode_browser.js");

const env = process.env;
const seen = { console: [], requests: [], overlaps: [], barriers: {} };
const axe = fs.readFileSync(env.AXE, "utf8");

// What keeps people out of the page as it stands, by axe-core: rule, place and advice of each grave violation.
// `where` keeps to parts of the page; `rules` to some of axe-core's rules, where the rest were asked before.
async function barriers(page, name, where = ["body"], rules = undefined) {
  await page.evaluate(axe);
  const found = await page.evaluate(([include, values]) => axe.run({ include }, {
    resultTypes: ["violations"], ...(values && { runOnly: { type: "rule", values } }),
  }), [where, rules]);
  if (!found.passes.length) throw new Error("axe-core judged nothing");
  seen.barriers[name] = found.violations.filter((v) => v.impact === "serious" || v.impact === "critical")
    .flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(" ")}: ${n.failureSummary}`));
}

// Pairs of texts of one drawing whose boxes overlap by more than a hair (0.3 mm of the sheet).
const overlaps = () => {
  const found = [];
  for (const svg of document.querySelectorAll("#edition .viewer svg")) {
    const hair = 0.3 * svg.getBoundingClientRect().width / Number(svg.dataset.whole.split(" ")[2]);
    const boxes = [...svg.querySelectorAll("text")].map((t) => [t.textContent, t.getBoundingClientRect()]);
    boxes.forEach(([a, p], i) => boxes.slice(i + 1).forEach(([b, q]) => {
      if (p.left + hair < q.right && q.left + hair < p.right && p.top + hair < q.bottom && q.top + hair < p.bottom) found.push([a, b]);
    }));
  }
  return found;
};
const facts = () => Object.fromEntries([...document.querySelectorAll("#details dt")].map((t) => [t.textContent, t.nextSibling.textContent]));

async function report(page) {
  await page.goto(pathToFileURL(env.PAGE).href);
  seen.setAtFirst = await page.evaluate(() =>
    [...document.querySelectorAll(".sheet")].filter((e) => e.checkVisibility({ contentVisibilityAuto: true })).length);
  seen.overlaps = await page.evaluate(overlaps);
  seen.texts = await page.locator("#edition .viewer text").count();
  await page.emulateMedia({ colorScheme: "light" });
  await barriers(page, "light", ["html"]);

  // Find by tag, with the keyboard alone.
  await page.keyboard.press("/");
  await page.keyboard.type(env.TAG.toLowerCase());
  seen.hits = await page.locator("#found li b").allTextContents();
  await page.keyboard.press("Enter");
  seen.title = await page.locator("#details h2").textContent();
  seen.source = await page.locator("#details .where code").textContent();
  seen.facts = await page.evaluate(facts);
  seen.picked = await page.locator(".oneline g.node.picked").count();
  await page.locator("#details summary", { hasText: "connected load" }).click();
  seen.working = await page.locator("#details details[open] pre").textContent();
  await barriers(page, "light, one element", ["#details", ".top"]);
  await page.keyboard.press("Escape");
  seen.closed = await page.locator("#details").isHidden();
  seen.focus = await page.evaluate(() => document.activeElement.id);

  // A click on a symbol; a link to a working sheet.
  await page.locator("#edition").evaluate(() => scrollTo(0, 0));
  await page.locator(".viewer").first().focus();
  await page.keyboard.press("0"); // the whole sheet again
  await page.locator(".oneline g.node").first().locator("text").first().click();
  seen.clicked = await page.locator("#details h2").textContent();
  await page.keyboard.press("Escape");
  await page.locator("table.load-summary td a").first().click();
  seen.target = await page.locator(":target pre").count();

  // What the bar covers of a heading that a link leads to, pixels.
  await page.locator("nav a").nth(2).click();
  seen.covered = await page.evaluate(() => document.querySelector(".top").getBoundingClientRect().bottom
    - document.querySelector(":target h2").getBoundingClientRect().top);

  // Zoom and move by keys; a reload would show the whole sheet again.
  const svg = page.locator(".viewer svg").first();
  await page.locator(".viewer").first().focus();
  await page.keyboard.press("0");
  const whole = await svg.getAttribute("viewBox");
  for (const key of ["+", "+", "ArrowRight"]) await page.keyboard.press(key);
  seen.zoomed = [whole, await svg.getAttribute("viewBox")];
  await page.keyboard.press("0");
  seen.back = await svg.getAttribute("viewBox");

  // Another switch state, and back.
  seen.rows = {};
  for (const state of [env.STATE, "normal"]) {
    await page.selectOption("#scenario", state);
    seen.rows[state] = await page.evaluate(() => [...document.querySelectorAll("#edition table.load-summary tbody tr")].map((r) => [r.cells[0].textContent, r.cells[2].textContent]));
    seen.viewers = await page.locator("#edition .viewer .zoom").count();
    seen.sheets = await page.locator("#edition .viewer").count();
  }

  // Light and dark differ in paper and ink, and the choice overrides the system.
  const colours = () => page.evaluate(() => [getComputedStyle(document.body).backgroundColor, getComputedStyle(document.querySelector(".oneline")).color]);
  await page.emulateMedia({ colorScheme: "light" });
  seen.light = await colours();
  await page.emulateMedia({ colorScheme: "dark" });
  seen.dark = await colours();
  await barriers(page, "dark", ["html"], ["color-contrast"]);
  await page.locator("table.load-summary tbody tr").first().locator("td").nth(1).click();
  await page.locator("#find").fill(env.TAG.slice(0, 2));
  await barriers(page, "dark, one element and the words found", ["#details", ".top", "table.load-summary"]);
  await page.locator("#find").fill("");
  await page.locator("#details .close").click();
  await page.locator("#theme").click();
  seen.chosen = await colours();

  const pdf = await page.pdf({ preferCSSPageSize: true });
  seen.pages = [...pdf.toString("latin1").matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)].map((m) => [Number(m[1]), Number(m[2])]);
}

async function preview(page) {
  await page.goto(env.ADDRESS);
  await page.locator(".oneline g.node text", { hasText: env.TAG }).first().waitFor();
  await page.waitForTimeout(300); // until the page listens
  await barriers(page, "preview", ["html"]);
  const text = fs.readFileSync(env.MODEL, "utf8");
  const begun = Date.now();
  fs.writeFileSync(env.MODEL, text.replaceAll(env.TAG, env.NEW_TAG).replace(/^  issue 2 /m, "  issue 9 "));
  await page.locator(".oneline g.node text", { hasText: env.NEW_TAG }).first().waitFor();
  seen.renewed_ms = Date.now() - begun;
  seen.title = await page.locator("#title").textContent();
  await page.locator(".oneline g.node text", { hasText: env.NEW_TAG }).first().click();
  await page.locator("#details button", { hasText: "Show in editor" }).click();
  await page.waitForTimeout(300);
  fs.renameSync(env.MODEL, `${env.MODEL}.away`);
  await page.locator("#notice").waitFor();
  seen.notice = await page.locator("#notice").textContent();
  await barriers(page, "preview with a notice", ["#notice", ".top"]);
}

async function main() {
  const { browser, page } = await browse();
  page.setDefaultTimeout(15000);
  page.on("console", (message) => seen.console.push(message.text()));
  page.on("pageerror", (error) => seen.console.push(String(error)));
  page.on("request", (request) => seen.requests.push(request.url()));
  let code = 0;
  try {
    await (env.ADDRESS ? preview(page) : report(page));
  } catch (error) {
    console.log(error);
    await page.screenshot({ path: path.join(path.dirname(env.STORY_REPORT), "failed.png") }).catch(() => {});
    code = 1;
  }
  fs.writeFileSync(env.STORY_REPORT, JSON.stringify(seen));
  await browser.close();
  process.exit(code);
}

main();
