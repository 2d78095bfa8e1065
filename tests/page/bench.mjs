// What the page's tests stand on: the real program in an empty folder, a real browser, and a few words.
import { chromium } from "playwright-core";
import assert from "node:assert/strict";
import { execFileSync, spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";

const require = createRequire(import.meta.url);
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

export const [root, program] = process.argv.slice(2, 4);
if (!program) throw new Error("node FILE.mjs SOURCE_FOLDER PROGRAM");
const browser_path = process.env.CHROMIUM ?? "/usr/bin/chromium";

export const tablet = { width: 768, height: 1024 };
export const laptop = { width: 1366, height: 768 };

const running = new Set();
process.on("exit", () => running.forEach((one) => one.kill("SIGKILL")));

/** The program serving an empty folder, or a given one again. */
export class Serving {
  constructor(folder = mkdtempSync(join(tmpdir(), "bench-")), ...words) {
    this.folder = folder;
    this.words = words;
    this.program = program;
  }

  async start() {
    const words = ["serve", "--no-browser", ...this.words];
    this.process = spawn(this.program, words, { cwd: this.folder, stdio: ["ignore", "pipe", "inherit"] });
    running.add(this.process);
    const line = await new Promise((heard, failed) => {
      this.process.stdout.once("data", (data) => heard(String(data)));
      this.process.once("exit", (code) => failed(new Error(`the program ended with ${code}`)));
    });
    this.address = /http:\S+/.exec(line)[0];
    this.port = Number(new URL(this.address).port);
    return this;
  }

  async stop() {
    const gone = new Promise((done) => this.process.once("exit", done));
    this.process.kill("SIGTERM");
    await gone;
    running.delete(this.process);
  }

  async end() {
    await this.stop();
    rmSync(this.folder, { recursive: true, force: true });
  }

  file(name) {
    return JSON.parse(readFileSync(join(this.folder, name), "utf8"));
  }

  /** What the command line prints for a file of this folder. */
  printed(...words) {
    return JSON.parse(execFileSync(program, [...words, "--json"], { cwd: this.folder, encoding: "utf8" }));
  }
}

export async function browser(...words) {
  return chromium.launch({
    executablePath: browser_path,
    args: ["--no-sandbox", "--disable-dev-shm-usage", "--enable-unsafe-swiftshader", ...words],
  });
}

/** A page that fails its test for anything said on the console, but for an answer that refuses; where a run is set up. */
export async function open(from, address, viewport = laptop) {
  const context = await from.newContext({ viewport, acceptDownloads: true });
  return open_in(context, address);
}

/** How long each question stays on its way: with 700, say, a test shows whether it reads what is not there yet. */
const late_ms = Number(process.env.LATE_MS ?? 0);

const parts = ["pour", "pipe", "decorate", "dust", "cut", "lye", "label", "studio"].map((name) => `set-up ${name}`);

/** Parts of the set-up that were never folded or unfolded stand open, so that their fields are at hand. */
export async function open_in(context, address, view = "Set up") {
  await context.addInitScript((all) => {
    if (location.origin === "null") return; // a blank page has no storage
    if (localStorage.getItem("parts") === null) localStorage.setItem("parts", all);
  }, JSON.stringify(parts));
  const page = await context.newPage();
  if (late_ms) await page.route(/\/api\//, (route) => setTimeout(() => route.continue().catch(() => {}), late_ms));
  page.said = [];
  page.on("console", (message) => {
    const is_refusal = /status of (409|422)/.test(message.text());
    if (message.type() === "error" && !is_refusal) page.said.push(message.text());
    if (/Content Security Policy/i.test(message.text())) page.said.push(message.text());
  });
  page.on("pageerror", (error) => page.said.push(String(error.stack)));
  await page.goto(address);
  await page.locator(".bar, main [role=alert]").first().waitFor();
  if (await page.locator(".bar").count()) await to(page, view);
  return page;
}

/** A run of the list, by how its card begins, where a view of it stands. */
export async function open_run(page, card, view) {
  await to(page, "Runs");
  await page.getByRole("button", { name: card }).first().click();
  await page.locator("#run-title").waitFor(); // which no list has
  if (view) await to(page, view);
  await settled(page);
}

/** To a list or a view of the run, by the rail or the bar. */
export async function to(page, view) {
  const button = page.locator(".rail nav button", { hasText: new RegExp(`^\\s*${view}\\b`) });
  await button.click();
  await page.locator(".rail nav button[aria-current]", { hasText: new RegExp(`^\\s*${view}\\b`) }).waitFor();
}

/**
 * A test on a page of the program that serves a folder of its own. `files`, documents by their names, lie in it before;
 * `words` are said to the program as it starts; `begin` goes where the test begins.
 */
export async function on_page(from, test, { files = {}, words = [], viewport = laptop, begin } = {}) {
  const serving = new Serving(undefined, ...words);
  for (const [name, json] of Object.entries(files))
    writeFileSync(join(serving.folder, name), `${JSON.stringify(json, null, 2)}\n`);
  await serving.start();
  const page = await open(from, serving.address, viewport);
  try {
    await settled(page);
    await begin?.(page);
    await test(page, serving);
    check_quiet(page);
  } finally {
    await page.context().close();
    await serving.end();
  }
}

/** Documents that come with the program, by their names there. */
export const examples = (...names) =>
  Object.fromEntries(names.map((name) => [name, JSON.parse(readFileSync(join(root, "examples", name), "utf8"))]));

export function check_quiet(page) {
  assert.deepEqual(page.said, [], "the console is not quiet");
}

/** The state of the page has no fault that axe knows of. */
export async function check_access(page, state) {
  await page.evaluate(axe); // through the debugger, which the page's own rules do not bind
  const { violations } = await page.evaluate(() => globalThis.axe.run(document, { resultTypes: ["violations"] }));
  const found = violations.map(
    (one) =>
      `${one.id}: ${one.nodes
        .map((node) => node.html)
        .slice(0, 3)
        .join(" | ")}`,
  );
  assert.deepEqual(found, [], `${state}: axe found faults`);
}

/** Nothing on a tablet is too small for a finger, or sticks out. */
export async function check_tablet(page, state) {
  const small = await page.evaluate(() =>
    [...document.querySelectorAll("button:not(.skip), input, select, summary, [role=slider]")]
      .map((node) => (node.matches(".weigh input") ? node.closest("label") : node)) // the row is the tick box
      .map((node) => [node.outerHTML.slice(0, 120), node.getBoundingClientRect(), node.closest(".weigh") ? 39.9 : 43.9])
      .filter(([, box, least]) => box.width && (box.width < least || box.height < least))
      .map(([words]) => words),
  );
  assert.deepEqual(small, [], state);
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), tablet.width, state);
  await check_access(page, `${state}, on a tablet`);
}

/** Types an answer into each field, by its label. */
export async function fill(within, answers) {
  for (const [label, value] of Object.entries(answers)) await within.getByLabel(label, { exact: true }).fill(value);
}

/** Waits until the figures on the page are those of what was typed. */
export async function settled(page) {
  const is_settled = () => document.documentElement.dataset.settled === "true" && !document.querySelector(".old");
  try {
    await page.waitForFunction(is_settled);
  } catch (error) {
    throw new Error(`${error.message}\n${await page.evaluate(what_stands)}`);
  }
}

/** For whoever reads why a test failed: what stands on the page instead of figures of now. */
function what_stands() {
  const words = (selector) => [...document.querySelectorAll(selector)].map((one) => one.innerText.trim());
  return [
    `settled: ${document.documentElement.dataset.settled}; ${document.querySelectorAll(".old").length} old; at ${location.hash}`,
    ...[".foremost", ".complaints", ".complaint", ".alarm", ".banner", ".saving"].flatMap((one) =>
      words(one).map((said) => `${one}: ${said}`),
    ),
    `buttons pressed: ${words('#main [aria-pressed="true"], #main [aria-checked="true"]').join(" | ")}`,
  ].join("\n");
}

/** From a mould that lies open: what a new run is asked, and its pour line. */
export async function begin_run(page, { base = /^Meadow base/, sell = 6, below_brim = "5 mm" } = {}) {
  await page.getByLabel("Pieces to sell", { exact: true }).fill(String(sell));
  await page.getByRole("button", { name: base }).click();
  await page.getByLabel("Below brim", { exact: true }).fill(below_brim);
}

/** All that is folded away; what is folded into something folded is drawn once that is open. */
export async function open_all(page) {
  const shut = page.locator("details:not([open]) > summary");
  await page.locator("summary").first().waitFor();
  while (await shut.count()) await shut.first().click();
}

export async function saved(page) {
  await page.waitForFunction(() => /^Saved in/.test(document.querySelector(".saving")?.textContent ?? ""));
}

/** What is weighed, as the weighing view shows it: names and amounts. */
export async function weighed_rows(page) {
  await to(page, "Weigh");
  await settled(page);
  await page.locator(".weighing .weigh").first().waitFor(); // once it is known what is ticked already
  return page.locator(".weighing .weigh").evaluateAll((rows) =>
    rows.map((one) => [
      [...one.querySelector(".name").childNodes]
        .filter((node) => node.nodeType === Node.TEXT_NODE)
        .map((node) => node.textContent)
        .join("")
        .trim(),
      one.querySelector(".amount b").textContent,
    ]),
  );
}

/** What is weighed of a batch, as the command line prints it. */
export const printed_rows = (batch, is_first = true) =>
  batch.weigh_out
    .filter(({ vessel }) => vessel !== "melt" || is_first)
    .flatMap(({ rows }) => rows)
    .map(({ name, shown }) => [name, shown]);

/** The batch whose weights the page shows first: the largest. */
export const first_batch = (plan) => plan.batches[0];

/** Opens a figure: how the program says that it came about. */
export async function opened(of) {
  await of.locator("button").first().click();
  await of.locator(".sum .formula").first().waitFor();
  return of.locator(".sum").first().innerText();
}

/** A figure's first number, by what it is called. */
export async function figure(page, label, within = "main") {
  const line = page.locator(within).locator(".figure .line", { hasText: label }).first();
  return Number.parseFloat((await line.locator(".value b").innerText()).replace(/[^\d.-]/g, ""));
}

/** All of them, or those whose sentence has the words of ONLY in it. */
export async function run(tests) {
  const only = process.env.ONLY ?? "";
  let failed = 0;
  for (const [sentence, test] of Object.entries(tests)) {
    if (!sentence.includes(only)) continue;
    const start = Date.now();
    try {
      await test();
      console.log(`ok   ${sentence} (${Date.now() - start} ms)`);
    } catch (error) {
      failed += 1;
      console.log(`FAIL ${sentence}\n${error.stack}`);
    }
  }
  // What a failed test left running must not hold up the rest.
  if (failed) process.exit(1);
}
