"use strict";
(() => {
  const root = document.documentElement;
  const main = document.getElementById("edition");
  const panel = document.getElementById("details");
  const search = document.getElementById("find");
  const found = document.getElementById("found");
  const live = document.body.dataset.live !== undefined;
  let picked = "";
  let before = null;

  // What a link leads to stands below the bar, however many lines that takes.
  const bar = document.querySelector(".top");
  const below = () => {
    const covers = getComputedStyle(bar).position === "sticky" ? bar.offsetHeight : 0;
    root.style.scrollPaddingTop = `${covers + 8}px`;
  };
  new ResizeObserver(below).observe(bar);
  below();

  const element = (tag, text, className) => {
    const made = document.createElement(tag);
    if (text !== undefined) made.textContent = text;
    if (className) made.className = className;
    return made;
  };
  const about = (group) => (group.classList.contains("edge") ? "f " : "e ") +
    group.dataset.id.replace(/, coming in$/, "").replace(group.classList.contains("node") ? / \(\d+\)$/ : /$^/, "");
  const groups = () => main.querySelectorAll(".oneline g.node, .oneline g.edge");
  const rowsOf = (name) => [...main.querySelectorAll("[data-about]")].filter((e) => e.dataset.about === name);

  // Pan and zoom: the viewBox is the window on the sheet.

  const box = (svg) => svg.getAttribute("viewBox").split(" ").map(Number);
  const setBox = (svg, b) => svg.setAttribute("viewBox", b.map((v) => v.toFixed(2)).join(" "));
  function zoom(svg, factor, x, y) {
    const [left, top, width, height] = box(svg);
    const whole = svg.dataset.whole.split(" ").map(Number);
    const w = Math.min(whole[2], Math.max(whole[2] / 24, width * factor));
    const f = w / width;
    const cx = x === undefined ? left + width / 2 : x;
    const cy = y === undefined ? top + height / 2 : y;
    setBox(svg, [cx - (cx - left) * f, cy - (cy - top) * f, w, height * f]);
    if (w === whole[2]) setBox(svg, whole);
  }
  function point(svg, event) {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    return [at.x, at.y];
  }
  function move(svg, dx, dy) {
    const [left, top, width, height] = box(svg);
    setBox(svg, [left + dx * width, top + dy * height, width, height]);
  }
  const KEYS = {
    "+": (s) => zoom(s, 0.8), "=": (s) => zoom(s, 0.8), "-": (s) => zoom(s, 1.25), 0: (s) => setBox(s, s.dataset.whole.split(" ").map(Number)),
    ArrowLeft: (s) => move(s, -0.1, 0), ArrowRight: (s) => move(s, 0.1, 0), ArrowUp: (s) => move(s, 0, -0.1), ArrowDown: (s) => move(s, 0, 0.1),
  };
  function prepare(viewer) {
    const svg = viewer.querySelector("svg");
    svg.dataset.whole = svg.getAttribute("viewBox");
    svg.setAttribute("preserveAspectRatio", "xMidYMid meet");
    const bar = element("div", undefined, "zoom");
    for (const [sign, name, key] of [["+", "Zoom in", "+"], ["−", "Zoom out", "-"], ["⤢", "Whole sheet", 0]]) {
      const button = element("button", sign);
      button.type = "button";
      button.title = `${name} (${key})`;
      button.setAttribute("aria-label", name);
      button.addEventListener("click", () => KEYS[key](svg));
      bar.append(button);
    }
    viewer.append(bar);
    viewer.addEventListener("keydown", (event) => {
      const act = KEYS[event.key];
      if (!act || event.ctrlKey || event.metaKey || event.altKey || event.target.closest("button")) return;
      event.preventDefault();
      act(svg);
    });
    svg.addEventListener("wheel", (event) => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      zoom(svg, event.deltaY > 0 ? 1.15 : 0.87, ...point(svg, event));
    }, { passive: false });
    let from = null;
    let moved = false;
    svg.addEventListener("pointerdown", (event) => {
      if (event.button === 0) { from = [event.clientX, event.clientY]; moved = false; }
    });
    svg.addEventListener("pointermove", (event) => {
      if (!from) return;
      const dx = event.clientX - from[0], dy = event.clientY - from[1];
      if (!moved && Math.hypot(dx, dy) < 5) return;
      if (!moved) { moved = true; svg.setPointerCapture(event.pointerId); viewer.classList.add("dragging"); }
      const frame = svg.getBoundingClientRect();
      move(svg, -dx / frame.width, -dy / frame.height);
      from = [event.clientX, event.clientY];
    });
    const stop = () => { from = null; viewer.classList.remove("dragging"); };
    svg.addEventListener("pointerup", stop);
    svg.addEventListener("pointercancel", stop);
    svg.addEventListener("dblclick", (event) => zoom(svg, 0.6, ...point(svg, event)));
    svg.addEventListener("click", (event) => {
      const group = event.target.closest("g.node, g.edge");
      if (moved) { event.preventDefault(); return; }
      if (!group) return;
      event.preventDefault();
      select(about(group), group.querySelector("a") || viewer);
    });
  }
  function bring(group) {
    const svg = group.ownerSVGElement;
    const whole = svg.dataset.whole.split(" ").map(Number);
    const frame = (group.querySelector("text") || group).getBoundingClientRect();
    const [x, y] = point(svg, { clientX: frame.left + frame.width / 2, clientY: frame.top + frame.height / 2 });
    const w = whole[2] / 2.5, h = whole[3] / 2.5;
    setBox(svg, [x - w / 3, y - h / 2, w, h]);  // a little to the left: the panel covers the right
    svg.closest(".viewer").scrollIntoView({ block: "center" });
  }

  // One element: its figures from every table, its working sheets, its line.

  function select(name, from, options = {}) {
    picked = name;
    main.querySelectorAll(".picked").forEach((e) => e.classList.remove("picked"));
    const drawn = [...groups()].filter((g) => about(g) === name);
    drawn.forEach((g) => g.classList.add("picked"));
    const rows = rowsOf(name);
    rows.filter((r) => r.matches("tr, td")).forEach((r) => r.classList.add("picked"));
    if (options.bring && drawn.length) bring(drawn[0]);
    fill(name, rows, drawn);
    if (panel.hidden) before = from || document.activeElement;
    panel.hidden = false;
    if (!options.quiet) panel.querySelector(".close").focus();
  }
  function fill(name, rows, drawn) {
    panel.replaceChildren();
    const close = element("button", "×", "close");
    close.type = "button";
    close.setAttribute("aria-label", "Close");
    close.addEventListener("click", shut);
    panel.append(close, element("h2", name.slice(2)));
    const place = (rows.find((r) => r.dataset.source) || (drawn[0] && { dataset: drawn[0].dataset }) || { dataset: {} }).dataset.source;
    if (place) panel.append(where(place));
    for (const row of rows.filter((r) => r.matches("tr"))) panel.append(...listed(row));
    for (const table of rows.filter((r) => r.matches("div.table"))) {
      const link = element("a", table.querySelector("h3") ? table.querySelector("h3").textContent : "Schedule");
      link.href = `#${table.id}`;
      const line = element("p");
      line.append(link);
      panel.append(line);
    }
    const sheets = rows.filter((r) => r.matches(".sheet"));
    if (sheets.length) panel.append(element("h3", "Working"));
    for (const sheet of sheets) {
      const more = element("details");
      more.append(element("summary", sheet.querySelector("h3").textContent), sheet.querySelector("pre").cloneNode(true));
      panel.append(more);
    }
  }
  function where(place) {
    const line = element("div", undefined, "where");
    const copy = element("button", "Copy");
    copy.type = "button";
    copy.addEventListener("click", () => {
      if (navigator.clipboard) navigator.clipboard.writeText(place).then(() => { copy.textContent = "Copied"; }, () => {});
    });
    line.append(element("code", place), copy);
    if (live) {
      const show = element("button", "Show in editor");
      show.type = "button";
      show.addEventListener("click", () => fetch("select", { method: "POST", body: place }));
      line.append(show);
    }
    return line;
  }
  function listed(row) {
    const table = row.closest("table");
    const heads = [...table.querySelectorAll("thead th")];
    const list = element("dl");
    const unknown = new Map();
    [...row.cells].forEach((cell, at) => {
      if (!cell.textContent.trim() || cell.textContent === "0.00") return;
      const why = cell.querySelector(".unknown");
      if (why) {
        unknown.set(why.title, [...(unknown.get(why.title) || []), heads[at].firstChild.textContent.trim()]);
        return;
      }
      const value = element("dd");
      value.append(...[...cell.childNodes].map((n) => n.cloneNode(true)));
      const unit = heads[at].querySelector(".unit");
      if (unit) value.append(` ${unit.textContent}`);
      list.append(element("dt", heads[at].firstChild.textContent.trim()), value);
    });
    unknown.forEach((titles, why) => {
      const value = element("dd", `${titles.join(", ")}: ${why}`);
      value.prepend(element("span", "? ", "unknown"));
      list.append(element("dt", "Unknown"), value);
    });
    const part = row.closest(".part");
    return [element("h3", part.querySelector("h2").textContent), list];
  }
  function shut() {
    panel.hidden = true;
    picked = "";
    main.querySelectorAll(".picked").forEach((e) => e.classList.remove("picked"));
    if (before && before.isConnected) before.focus();
  }

  // Find by tag or description.

  let hits = [];
  let chosen = 0;
  let known = null;  // of the edition on show
  function index() {
    if (known) return known;
    const seen = known = new Map();
    for (const row of main.querySelectorAll("tr[data-about], td[data-about]")) {
      const name = row.dataset.about;
      const words = row.matches("td") ? row.textContent : [...row.cells].slice(1, 4).map((c) => c.textContent).join(" ");
      if (!seen.has(name)) seen.set(name, words);
    }
    for (const group of groups()) if (!seen.has(about(group))) seen.set(about(group), group.querySelector("title").textContent);
    return seen;
  }
  function look() {
    const wanted = search.value.trim().toLowerCase();
    found.replaceChildren();
    hits = [];
    chosen = 0;
    search.setAttribute("aria-expanded", String(Boolean(wanted)));
    search.removeAttribute("aria-activedescendant");
    if (!wanted) return;
    const rank = (name) => (name === wanted ? 0 : name.startsWith(wanted) ? 1 : name.includes(wanted) ? 2 : 3);
    hits = [...index()].map(([name, words]) => [name, words, rank(name.slice(2).toLowerCase())])
      .filter(([, words, r]) => r < 3 || words.toLowerCase().includes(wanted))
      .sort((a, b) => a[2] - b[2] || "efc".indexOf(a[0][0]) - "efc".indexOf(b[0][0])).slice(0, 14);
    hits.forEach(([name, words], at) => {
      const line = element("li");
      line.id = `hit-${at}`;
      line.setAttribute("role", "option");
      line.append(element("b", name.slice(2)), element("span", words));
      line.addEventListener("mousedown", (event) => { event.preventDefault(); choose(at); });
      found.append(line);
    });
    mark();
  }
  function mark() {
    [...found.children].forEach((line, at) => line.setAttribute("aria-selected", String(at === chosen)));
    if (hits.length) search.setAttribute("aria-activedescendant", `hit-${chosen}`);
  }
  function choose(at) {
    if (!hits[at]) return;
    const name = hits[at][0];
    search.value = "";
    look();
    select(name, search, { bring: true });
  }
  search.addEventListener("input", look);
  search.addEventListener("blur", () => setTimeout(() => found.replaceChildren(), 150));
  search.addEventListener("keydown", (event) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step && hits.length) { event.preventDefault(); chosen = (chosen + step + hits.length) % hits.length; mark(); }
    if (event.key === "Enter") { event.preventDefault(); choose(chosen); }
    if (event.key === "Escape") { search.value = ""; look(); }
  });
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && !panel.hidden) shut();
    if (event.key === "/" && !event.target.closest("input, select, textarea")) { event.preventDefault(); search.focus(); }
  });

  // Rows open the same panel as symbols do.

  main.addEventListener("click", (event) => {
    const row = event.target.closest("tr[data-about], td[data-about]");
    if (row && !event.target.closest("a") && !String(getSelection())) select(row.dataset.about, null);
  });

  // Switch states: each waits in a template of its own.

  const states = document.getElementById("scenario");
  if (states) states.addEventListener("change", () => {
    const now = [...document.querySelectorAll("template[data-scenario]")].find((t) => t.dataset.scenario === main.dataset.scenario);
    const next = [...document.querySelectorAll("template[data-scenario]")].find((t) => t.dataset.scenario === states.value);
    if (!next || next === now) return;
    document.querySelectorAll(".viewer svg").forEach((svg) => setBox(svg, svg.dataset.whole.split(" ").map(Number)));
    main.querySelectorAll(".zoom").forEach((bar) => bar.remove());
    now.content.replaceChildren(...main.childNodes);
    main.dataset.scenario = states.value;
    main.replaceChildren(...next.content.childNodes);
    started();
  });

  const theme = document.getElementById("theme");
  theme.addEventListener("click", () => {
    const next = { auto: "light", light: "dark", dark: "auto" }[root.dataset.theme || "auto"];
    if (next === "auto") delete root.dataset.theme; else root.dataset.theme = next;
    theme.textContent = { auto: "Light or dark: as the system", light: "Light", dark: "Dark" }[next];
  });

  function started() {
    known = null;
    main.querySelectorAll(".viewer").forEach(prepare);
    if (picked) select(picked, null, { quiet: true });
  }
  const windows = new Map();
  addEventListener("beforeprint", () => main.querySelectorAll(".viewer svg").forEach((svg) => {
    windows.set(svg, svg.getAttribute("viewBox"));
    svg.setAttribute("viewBox", svg.dataset.whole);
  }));
  addEventListener("afterprint", () => { windows.forEach((b, svg) => svg.setAttribute("viewBox", b)); windows.clear(); });
  started();

  // The live page: the server says when the model changed, and the page takes the new edition as it is.

  if (!live) return;
  const notice = document.getElementById("notice");
  const say = (text) => { notice.textContent = text; notice.hidden = !text; };
  let fetching = false;
  let missed = false;
  async function renew() {
    missed = fetching;
    if (fetching) return;
    fetching = true;
    try {
      await take();
    } catch {
      // The server has gone; the events tell so.
    } finally {
      fetching = false;
      if (missed) renew();
    }
  }
  async function take() {
    const answer = await fetch("edition");
    const text = await answer.text();
    say(answer.ok ? "" : text);
    if (!answer.ok) return;
    const fresh = new DOMParser().parseFromString(text, "text/html");
    const old = new Map([...main.querySelectorAll(".viewer svg")].map((svg) => [svg.id, [svg.getAttribute("viewBox"), svg.dataset.whole]]));
    const [stood, at] = standing();
    const scrolled = scrollY;
    document.getElementById("title").replaceChildren(fresh.getElementById("title-now").content);
    main.replaceChildren(...fresh.getElementById("edition").childNodes);
    main.dataset.edition = String(Number(main.dataset.edition || 0) + 1);
    started();
    main.querySelectorAll(".viewer svg").forEach((svg) => {
      const kept = old.get(svg.id);
      if (kept && kept[1] === svg.dataset.whole) svg.setAttribute("viewBox", kept[0]);
    });
    // What was not in view yet has no height of its own: the page stays with what stood on top.
    const again = stood && document.getElementById(stood);
    if (again) scrollBy(0, again.getBoundingClientRect().top - at); else scrollTo(0, scrolled);
  }
  function standing() {
    const top = document.querySelector(".top").getBoundingClientRect().bottom + 4;
    const found = document.elementFromPoint(innerWidth / 2, top);
    const part = found && found.closest(".viewer, .table, .sheet, .part");
    const named = part && (part.id ? part : part.querySelector("[id]"));
    return named && main.contains(named) ? [named.id, named.getBoundingClientRect().top] : ["", 0];
  }
  const events = new EventSource("events");
  events.addEventListener("edition", () => renew());
  events.addEventListener("error", () => say("The preview has ended; start it again."));
  events.addEventListener("open", () => say(""));
})();
