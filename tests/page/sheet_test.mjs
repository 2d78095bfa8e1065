// From an empty folder to a printed sheet, by clicks: what is printed is what the command line plans, on as many pages
// as its own PDF has, and the drawing is of true size on the paper. Text and dots are read by poppler, which we did not write.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { copyFileSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  Serving,
  begin_run,
  browser,
  check_access,
  check_quiet,
  open,
  program,
  run,
  saved,
  settled,
  tablet,
  to,
} from "./bench.mjs";

const chromium = await browser();
const field = (page, label) => page.getByLabel(label, { exact: true });
const read = (...words) => execFileSync(words[0], words.slice(1), { maxBuffer: 1 << 28 });
const pages_of = (pdf) => Number(/Pages:\s+(\d+)/.exec(read("pdfinfo", pdf))[1]);
const text_of = (pdf, page) =>
  String(read("pdftotext", "-layout", ...(page ? ["-f", page, "-l", page] : []), pdf, "-"));
const dots_per_mm = 10;

/** A page as rows of grey, 10 dots to the millimetre. */
function dots_of(pdf, page) {
  const pgm = read("pdftoppm", "-r", String(dots_per_mm * 25.4), "-gray", "-f", page, "-l", page, pdf);
  const [head, wide, high] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 40).toString("latin1"));
  return Array.from({ length: Number(high) }, (_, y) =>
    pgm.subarray(head.length + y * wide, head.length + (y + 1) * wide),
  );
}

/** Lengths in millimetres of all dark lines that lie level, from 10 mm up. */
function level_lines(rows) {
  const found = [];
  rows.forEach((row, y) => {
    for (let x = 0, from = -1; x <= row.length; ++x) {
      const is_dark = x < row.length && row[x] < 128;
      if (is_dark && from < 0) from = x;
      if (is_dark || from < 0) continue;
      if (x - from > 10 * dots_per_mm)
        found.push({ long: (x - from) / dots_per_mm, x: from / dots_per_mm, y: y / dots_per_mm });
      from = -1;
    }
  });
  return found;
}

const has_line = (lines, long, within = 0.35) => lines.some((line) => Math.abs(line.long - long) <= within);

/** What she weighs for one batch, as the program's plan has it. */
const weights = ({ pour, pipe }) =>
  [pour, ...(pipe?.whippings ?? [])].flatMap((batter) => batter.ingredients.map((one) => one.g));

await run({
  "from an empty folder to a printed sheet, by clicks": async () => {
    const serving = await new Serving().start();
    const page = await open(chromium, serving.address, tablet);
    await settled(page);
    await to(page, "Moulds");
    await page.getByRole("button", { name: "By its inside measures" }).click();
    await field(page, "What you call it").fill("Garden bar");
    await field(page, "Longer side at the brim (mm)").fill("84");
    await field(page, "Shorter side (mm)").fill("56");
    await field(page, "Floor to brim (mm)").fill("30");
    await field(page, "Cavities in one mould").fill("8");
    await page.locator(".order", { hasText: "Holds" }).waitFor();
    await page.getByRole("button", { name: "Use this mould" }).click();
    await begin_run(page, { sell: 12 });
    await settled(page);
    await page.getByRole("button", { name: "Pour line 1 mm lower" }).click();
    await page.getByRole("button", { name: "Add a topping" }).click();
    await field(page, "Topping").selectOption({ label: "Meadow base" });
    await page.getByRole("button", { name: "Weigh trials piped on paper" }).click();
    await field(page, "Trial 1").fill("20 g");
    await field(page, "Weigh-cup of the trials, net").fill("80 g");
    await field(page, "Cup holds").first().fill("120 ml");
    await page.getByRole("button", { name: "Mostly, 80 %" }).click();
    await field(page, "Weigh-cup, net").fill("80 g");
    await field(page, "Cup holds").last().fill("120 ml");
    await field(page, "Topping: left in the bag").fill("30 g");
    await field(page, "Topping: left in bowl and whisk").fill("30 g");
    await settled(page);
    await saved(page);
    const plan = serving.printed("plan", "garden_bar.run.json");
    assert.equal(plan.pieces.sell, 12);
    await to(page, "Print");
    await check_access(page, "before printing");
    for (const paper of ["A4", "Letter"]) {
      await page.getByRole("button", { name: new RegExp(`${paper}$`) }).click();
      const [sheet] = await Promise.all([
        page.context().waitForEvent("page"),
        page.getByRole("button", { name: "Bench sheet, to print" }).click(),
      ]);
      await sheet.waitForLoadState();
      const printed = join(serving.folder, `${paper}.pdf`);
      await sheet.pdf({ path: printed, preferCSSPageSize: true });
      check_printed(printed, paper, plan);
      const own = join(serving.folder, `own ${paper}.pdf`);
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Bench sheet, PDF" }).click(),
      ]);
      await download.saveAs(own);
      check_printed(own, paper, plan);
      assert.ok(
        Math.abs(pages_of(own) - pages_of(printed)) <= plan.batches.length,
        `${pages_of(printed)} pages by the browser, ${pages_of(own)} of our own`,
      );
      await sheet.close();
    }
    check_quiet(page);
    await page.context().close();
    await serving.end();
  },

  "without its helper programs the page offers what works, and nothing else": async () => {
    const serving = new Serving();
    serving.program = join(serving.folder, ".alone", "brimwright");
    mkdirSync(join(serving.folder, ".alone"));
    copyFileSync(program, serving.program);
    await serving.start();
    const page = await open(chromium, serving.address);
    await settled(page);
    await to(page, "Print");
    await page.getByRole("button", { name: "Bench sheet, to print" }).waitFor();
    assert.equal(await page.getByRole("button", { name: "Bench sheet, PDF" }).count(), 0);
    await to(page, "Moulds");
    await page.getByRole("button", { name: "From a mesh file" }).click();
    assert.equal(await page.locator("#mesh-file").getAttribute("accept"), ".stl");
    assert.match(await page.locator(".drop").innerText(), /STL, the binary kind/);
    await check_access(page, "without helper programs");
    check_quiet(page);
    await page.context().close();
    await serving.end();
  },

  "the label's draft, the drawings and the solids are one tap each": async () => {
    const serving = await new Serving().start();
    const page = await open(chromium, serving.address);
    await settled(page);
    await to(page, "Print");
    await page.getByRole("button", { name: "Cavity, STL" }).waitFor();
    const begins = {
      "Label draft": "Spring cups, twisted\nLABEL, DRAFT",
      "Drawing of the pour, true size": "<svg",
      "Drawing of the piece": "<svg",
      "Whole piece, GLB": "glTF",
      "Whole piece, STL": undefined,
      "Filled cavity, GLB": "glTF",
      "Cavity, STL": undefined,
    };
    for (const [button, start] of Object.entries(begins)) {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: button }).click(),
      ]);
      const bytes = readFileSync(await download.path());
      if (start) assert.ok(bytes.toString("latin1").includes(start), `${button} begins with ${bytes.subarray(0, 30)}`);
      else assert.equal(bytes.length, 84 + 50 * bytes.readUInt32LE(80), button); // binary STL: head, count, 50 bytes a facet
      await page.getByText("is in your downloads").waitFor();
    }
    check_quiet(page);
    await page.context().close();
    await serving.end();
  },
});

function check_printed(pdf, paper, plan) {
  const size = { A4: [210, 297], Letter: [215.9, 279.4] }[paper]; // ISO 216; 8 1/2 in x 11 in
  const points = /Page size:\s+([\d.]+) x ([\d.]+)/.exec(read("pdfinfo", pdf));
  for (const i of [0, 1]) assert.ok(Math.abs((points[i + 1] / 72) * 25.4 - size[i]) < 0.3, `${paper} is ${points[0]}`);
  const text = text_of(pdf);
  for (const grams of plan.batches.flatMap(weights)) {
    const forms = [0, 1, 2, 3]
      .map((decimals) => grams.toFixed(decimals))
      .filter((form) => Math.abs(Number(form) - grams) < 1e-9);
    assert.ok(
      forms.some((form) => new RegExp(`(?<![\\d.])${form.replace(".", "\\.")} g\\b`).test(text)),
      `${grams} g is not on ${pdf}`,
    );
  }
  const numbers = Array.from({ length: pages_of(pdf) }, (_, i) => String(i + 1));
  const pages = numbers.map((i) => text_of(pdf, i).replace(/\s+/g, " "));
  const is_lye = ({ vessel }) => ["lye", "lye_pot", "share"].includes(vessel);
  for (const { title, rows } of plan.batches.flatMap(({ weigh_out }) => weigh_out).filter(is_lye))
    assert.ok(
      pages.some((page) => page.includes(title) && rows.every(({ shown }) => page.includes(shown))),
      `"${title}" is not whole on one page of ${pdf}`,
    );
  pages.forEach((page, i) =>
    assert.match(page, /Printed \d{4}-\d\d-\d\d \d\d:\d\d from /, `the foot of page ${i + 1} of ${pdf}`),
  );
  const drawn = numbers.filter((_, i) => pages[i].includes("Scale 1:1"));
  assert.equal(
    drawn.length,
    plan.batches.length,
    `one drawing for each size of batch, and they are on the pages ${drawn}`,
  );
  const lines = level_lines(dots_of(pdf, drawn[0]));
  // The bar of 84 mm from the side and from above, and the check bar, with up to a quarter millimetre of its own outline.
  assert.ok(
    has_line(lines, 84),
    `no line of 84 mm on ${pdf}: ${[...new Set(lines.map(({ long }) => long.toFixed(1)))]}`,
  );
  assert.ok(
    has_line(lines, 50.1, 0.151),
    `no check bar of 50 mm on ${pdf}: ${[...new Set(lines.map(({ long }) => long.toFixed(1)))]}`,
  );
}
await chromium.close();
