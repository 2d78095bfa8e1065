// What batches say: each figure as the command line tells it, taken and taken back by a tap, and a mould's ways side by side.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  browser,
  check_access,
  check_tablet,
  examples,
  on_page,
  program,
  root,
  run,
  settled,
  tablet,
  to,
} from "./bench.mjs";

const chromium = await browser();
const bars = "plain_bars.run.json";
const wide = { width: 1180, height: 820 };

const told = (folder, ...words) =>
  JSON.parse(execFileSync(program, [...words, "--json"], { cwd: folder, encoding: "utf8" }));
const noted = (folder, ...words) => execFileSync(program, ["note", bars, "--batch", "1", ...words], { cwd: folder });

/** Bars in a mould of her own, or in a built-in one. */
function bars_with(mould = "my_bar.json") {
  const files = examples(bars, "meadow_base.formula.json");
  for (const file of Object.values(files)) delete file.$schema;
  files[bars].pour.mould = mould;
  files["my_bar.json"] = JSON.parse(readFileSync(join(root, "moulds/plain_bar.json"), "utf8"));
  delete files["my_bar.json"].$schema;
  files["studio.json"] = {
    schema: "brimwright.studio/1",
    currency: "EUR",
    work: { paid_an_hour: "15", each_batch: "60 min" },
  };
  return files;
}

/** Batches that take 3 % more a cavity than planned, at another density, with `pot` grams left in the pot. */
function make(folder, from, count, pot = 31) {
  const { pour, batches } = told(folder, "plan", bars);
  for (let i = from; i < from + count; ++i) {
    const on = `2026-${String(1 + (i % 11)).padStart(2, "0")}-${10 + Math.floor(i / 11)}`;
    const dot = (i % 3) - 1;
    const [in_pot, g_per_ml] = [pot + dot, 1.045 + 0.004 * dot];
    const made = batches[0].casts * pour.volume_each_ml * 1.03 * g_per_ml + in_pot + 14 + 12;
    const sets = {
      "base.made": `${made.toFixed(0)} g`,
      "base.left_over": "12 g",
      "base.on_tools": `${in_pot + 14} g`,
      "base.in_pot": `${in_pot} g`,
      "base.cup_holds": "100 ml",
      "base.cup": `${(100 * g_per_ml).toFixed(1)} g`,
      "pour.filled": String(batches[0].casts),
      "pour.line_off": "0 mm",
      "minutes.making": `${90 + dot} min`,
      "pieces.made": "12",
      "pieces.rejected": String(i % 2),
    };
    noted(folder, "--begin", "--on", on, "--confirmed", on, ...(i ? ["--again"] : []));
    noted(folder, ...Object.entries(sets).flatMap(([key, value]) => ["--set", `${key}=${value}`]));
  }
}

const made = new Map();

/** Records of so many batches, made once. */
function records(count, files, name) {
  const key = `${count} ${name}`;
  if (!made.has(key)) {
    const folder = mkdtempSync(join(tmpdir(), "learned-"));
    process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
    for (const [file, json] of Object.entries(files))
      writeFileSync(join(folder, file), `${JSON.stringify(json, null, 2)}\n`);
    make(folder, 0, count);
    made.set(key, join(folder, "records.sqlite"));
  }
  return made.get(key);
}

const with_batches = (count, test, { mould, viewport = wide } = {}) => {
  const files = bars_with(mould);
  const start = async (page, serving) => {
    if (count) copyFileSync(records(count, files, mould), join(serving.folder, "records.sqlite"));
    await page.reload();
    await to_learned(page);
    await test(page, serving);
  };
  return on_page(chromium, start, { files, words: [bars], viewport });
};

const main = (page) => page.locator("main");
const button = (page, name) => main(page).getByRole("button", { name, exact: true });

async function to_learned(page) {
  await to(page, "Record");
  const way = button(page, "What your batches say");
  await way
    .or(page.locator(".record p", { hasText: "No batch of this run" }))
    .first()
    .waitFor();
  if (await way.count()) await way.click();
}

const card = (page, name) => page.locator(`.learned-figure[data-name="${name}"]`);
const tap = async (page, name, words) => card(page, name).getByRole("button", { name: words, exact: true }).click();
const taken = (page, name, says) => card(page, name).locator(".taken b", { hasText: says }).waitFor();
const text = (serving, name) => readFileSync(join(serving.folder, name), "utf8");

/** The first number in a text. */
const number_in = (words) => Number(/[-+]?\d+(\.\d+)?/.exec(words)[0]);

/** As the page rounds it, in the unit that it stands in first. */
const near = (shown, value, unit) =>
  assert.ok(
    Math.abs(shown - value) <= (unit === "g/ml" ? 0.0006 : unit === "factor" ? 0.0006 : 0.51),
    `${shown} for ${value}`,
  );

await run({
  "each figure stands there as the command line tells it, with its count and range": () =>
    with_batches(7, async (page, serving) => {
      await card(page, "density").waitFor();
      const { figures, untold } = told(serving.folder, "learn", bars);
      assert.ok(figures.length >= 5);
      const names = await page.locator(".learned-figure").evaluateAll((all) => all.map((one) => one.dataset.name));
      assert.deepEqual(
        names,
        figures.map(({ name }) => name),
      );
      for (const one of figures) {
        const drawn = card(page, one.name);
        assert.equal(await drawn.locator(".count").innerText(), `${one.values.length} batches`);
        near(number_in(await drawn.locator(".learned-value b").innerText()), one.value, one.unit);
        near(number_in(await drawn.locator(".low").innerText()), one.low, one.unit);
        near(number_in(await drawn.locator(".high").innerText()), one.high, one.unit);
        if (one.used_now !== null)
          near(number_in(await drawn.locator(".used").first().innerText()), one.used_now, one.unit);
        assert.equal(
          await drawn.getByRole("button", { name: "Take it" }).count(),
          one.standing === "suggested" ? 1 : 0,
        );
      }
      assert.equal(await page.locator(".learned .limits li").count(), untold.length);
      await check_access(page, "what batches say");
    }),

  "minutes stand beside what the studio says": () =>
    with_batches(7, async (page, serving) => {
      const { figures } = told(serving.folder, "learn", bars);
      assert.equal(figures.find(({ name }) => name === "each_batch").used_now, 60);
      await card(page, "each_batch").locator(".used", { hasText: "60 min" }).waitFor();
      await tap(page, "each_batch", "Take it");
      await taken(page, "each_batch", "90 min");
      assert.equal(serving.file("studio.json").work.each_batch, "90 min");
    }),

  "what is taken stands in its file, the plan uses it and says so, and it is taken back in one step": () =>
    with_batches(7, async (page, serving) => {
      const before = text(serving, bars);
      const [was, would] = [told(serving.folder, "plan", bars), told(serving.folder, "learn", bars)];
      const mix = would.figures.find(({ name }) => name === "pot").with_it.find(({ of }) => of === "base to mix");
      assert.equal(mix.now, was.pour.make_g);
      await tap(page, "pot", "Take it");
      await taken(page, "pot", "31 g");
      assert.ok((await card(page, "pot").locator("[role=status]").innerText()).startsWith(bars));
      assert.equal(serving.file(bars).losses.pour.pot, "31 g");
      assert.equal(told(serving.folder, "plan", bars).pour.make_g, mix.then);
      await to(page, "Cautions");
      await settled(page);
      await main(page).getByText("is learned from 7 batches").first().waitFor({ state: "attached" });
      await to_learned(page);
      await tap(page, "pot", "Take back");
      await card(page, "pot").getByRole("button", { name: "Take it" }).waitFor();
      assert.equal(text(serving, bars), before);
      assert.equal(told(serving.folder, "plan", bars).pour.make_g, was.pour.make_g);
    }),

  "taken twice, it is taken back step by step, down to what she typed": () =>
    with_batches(7, async (page, serving) => {
      const before = text(serving, bars);
      await tap(page, "pot", "Take it");
      await taken(page, "pot", "31 g");
      const first = text(serving, bars);
      make(serving.folder, 7, 18, 40);
      await card(page, "pot").locator(".count", { hasText: "25 batches" }).waitFor();
      await tap(page, "pot", "Take it");
      await card(page, "pot").locator(".taken", { hasText: "which was taken as well" }).waitFor();
      assert.notEqual(text(serving, bars), first);
      await tap(page, "pot", "Take back");
      await taken(page, "pot", "31 g");
      assert.equal(text(serving, bars), first);
      await tap(page, "pot", "Take back");
      await card(page, "pot").locator(".taken").waitFor({ state: "detached" });
      assert.equal(text(serving, bars), before);
    }),

  "a file that another hand changed meanwhile is not written": () =>
    with_batches(7, async (page, serving) => {
      const hears = "**/api/changed?wait=20*";
      await page.route(hears, () => undefined); // the page hears of nothing from its beginning on
      await page.reload();
      await to_learned(page);
      await card(page, "volume").waitFor();
      await settled(page);
      const mould = { ...serving.file("my_bar.json"), note: "by another hand" };
      writeFileSync(join(serving.folder, "my_bar.json"), JSON.stringify(mould));
      await tap(page, "volume", "Take it");
      await card(page, "volume").locator(".complaint", { hasText: "was changed meanwhile" }).waitFor();
      assert.deepEqual(serving.file("my_bar.json"), mould);
      await tap(page, "volume", "Take it");
      await taken(page, "volume", "1.03");
      assert.equal(serving.file("my_bar.json").note, "by another hand");
      assert.ok(Math.abs(serving.file("my_bar.json").poured_factor - 1.03) < 0.001);
      await page.unroute(hears);
    }),

  "what would stand in a built-in file cannot be taken, and it is said why": () =>
    with_batches(
      7,
      async (page) => {
        await card(page, "volume").locator(".minded", { hasText: "a built-in file" }).waitFor();
        assert.equal(await card(page, "volume").getByRole("button", { name: "Take it" }).count(), 0);
        assert.equal(await card(page, "density").getByRole("button", { name: "Take it" }).count(), 1);
      },
      { mould: "moulds/plain_bar.json" },
    ),

  "below three batches nothing is shown, from three on nothing can be taken yet": () =>
    with_batches(2, async (page, serving) => {
      await main(page).getByText("a figure is shown once three of them tell it").waitFor();
      assert.equal(await page.locator(".learned-figure").count(), 0);
      make(serving.folder, 2, 1);
      await card(page, "pot").waitFor();
      await card(page, "pot").getByText("it can be taken from six on").waitFor();
      assert.equal(await button(page, "Take it").count(), 0);
    }),

  "by the keyboard alone a figure is taken": () =>
    with_batches(7, async (page, serving) => {
      await card(page, "density").waitFor();
      await settled(page); // until then its buttons are asleep
      await card(page, "density").getByRole("button", { name: "Take it" }).focus();
      await page.keyboard.press("Enter");
      await taken(page, "density", "g/ml");
      assert.match(serving.file("meadow_base.formula.json").measured_density, /^1\.04\d? g\/ml$/);
    }),

  "on a tablet everything can be tapped": () =>
    with_batches(
      7,
      async (page) => {
        await card(page, "pot").waitFor();
        await check_tablet(page, "what batches say");
        await to(page, "Mould");
        await page.locator(".each-way li").first().waitFor();
        await check_tablet(page, "the mould's ways");
      },
      { viewport: tablet },
    ),

  "the picture of a year is the command line's": () =>
    with_batches(7, async (page, serving) => {
      await button(page, "The year 2026, SVG").waitFor();
      const [download] = await Promise.all([page.waitForEvent("download"), button(page, "The year 2026, SVG").click()]);
      const picture = readFileSync(await download.path(), "utf8");
      const printed = execFileSync(program, ["learn", bars, "--year", "2026", "--picture", "-"], {
        cwd: serving.folder,
        encoding: "utf8",
      });
      assert.equal(picture, printed);
      assert.ok(picture.includes("sound pieces"));
    }),

  "a mould's ways stand side by side, as the command line tells them": () =>
    with_batches(7, async (page, serving) => {
      await to(page, "Mould");
      await page.locator('.each-way li[data-by="batches"]').waitFor();
      const { ways } = told(serving.folder, "gauge", "my_bar.json", "--batches-of", bars);
      assert.deepEqual(
        await page.locator(".each-way li").evaluateAll((all) => all.map((one) => one.dataset.by)),
        ways.ways.map(({ by }) => by),
      );
      for (const one of ways.ways) {
        const drawn = page.locator(`.each-way li[data-by="${one.by}"]`);
        near(number_in(await drawn.locator(".at-line").innerText()), one.at_line_ml, "ml");
        near(number_in(await drawn.locator(".brimful").innerText()), one.brimful_ml, "ml");
        assert.equal(await drawn.getByText("the plan uses it").count(), one.used ? 1 : 0);
      }
      await main(page).getByText(ways.used_because).waitFor();
      await check_access(page, "a mould's ways");
    }),
});

await chromium.close();
