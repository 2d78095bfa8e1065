// Lines that are poured together are recorded as a whole beneath their order: begun, noted, and each line's record found from there.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import {
  browser,
  check_access,
  check_quiet,
  examples,
  on_page,
  open,
  open_run,
  program,
  root,
  run,
  settled,
  to,
} from "./bench.mjs";

const chromium = await browser();
const wide = { width: 1180, height: 820 };
const lines = [
  ["plain_bars", 12],
  ["marble_bowls", 6],
];
const market = {
  schema: "brimwright.order/1",
  id: "5f1d6bb8-7d34-4c8e-9c6f-3a6f1d1f3c22",
  for: "Market",
  lines: lines.map(([name, pieces]) => ({ run: `${name}.run.json`, pieces, together: "A" })),
};

function own_files() {
  const files = examples(...readdirSync(join(root, "examples")).filter((name) => name.endsWith(".json")));
  for (const file of Object.values(files)) delete file.$schema;
  const { currency, prices } = files["spring_cups.run.json"].money;
  return { ...files, "studio.json": { schema: "brimwright.studio/1", currency, prices }, "market.order.json": market };
}

async function open_market(page) {
  await to(page, "Orders");
  await page.getByRole("button", { name: /^Market/ }).click();
  await page.getByRole("heading", { name: "Market", level: 1 }).waitFor();
  await page.locator(".of-base").waitFor();
  await page.locator(".quote-table:not(.old)").waitFor();
  await settled(page);
}

const with_page = (test, { viewport = wide, files = own_files() } = {}) =>
  on_page(chromium, test, { files, viewport, begin: open_market });

const base = (page) => page.locator(".of-base");
const button = (page, name) => base(page).getByRole("button", { name, exact: true });
const blank = (page, key) => page.locator(`.blank[data-key="${key}"]`);
const kept = (page, key) => blank(page, key).locator(".stands.kept").waitFor();

async function type(page, key, text) {
  const field = blank(page, key).locator("input");
  await field.fill(text);
  await field.press("Tab");
}

async function ask_to_begin(page, code = "KO-7") {
  await button(page, "Lye is mixed: begin the record").click();
  await base(page).getByLabel("Code on the pot").fill(code);
  await button(page, "Begin the record").click();
}

async function is_begun(page, code = "KO-7") {
  await base(page).locator(".batch-code .code", { hasText: code }).waitFor();
  await base(page).locator(".blank").first().waitFor();
}

async function begin(page, code = "KO-7") {
  await ask_to_begin(page, code);
  await is_begun(page, code);
}

const recorded = (serving, file = "market.order.json") => serving.printed("note", file).batches;
const its_base = (serving) => serving.printed("note", "market.order.json", "--batch", "1").batches[0];
const its_day = (folder) =>
  JSON.parse(execFileSync(program, ["note", "plain_bars.run.json", "--json"], { cwd: folder })).batches[0].begun
    .begun_on;
const left_of = (serving, lot) =>
  serving
    .printed("stock", ".")
    .materials.flatMap(({ lots }) => lots)
    .find((one) => one.lot === lot).left.g;

await run({
  "a base begins beneath its order, once, and every line has a record that leads there and back": () =>
    with_page(async (page, serving) => {
      serving.printed("stock", ".", "--bought", "olive oil", "--pack", "5 kg", "--lot", "OL-1");
      await begin(page);
      const [it] = recorded(serving);
      assert.equal(recorded(serving).length, 1);
      assert.equal(it.begun.code, "KO-7");
      assert.ok(left_of(serving, "OL-1") < 5000, "the base takes its lots");
      const shown = await base(page)
        .locator(".blank")
        .evaluateAll((all) => all.map((one) => one.dataset.key));
      assert.deepEqual(
        shown,
        its_base(serving).blanks.map(({ key }) => key),
      );
      assert.ok(shown.every((key) => key.startsWith("base.")));
      assert.equal(await base(page).locator(".sale").count(), 0, "a base is not for sale");
      for (const { code, run: name, pieces } of it.lines)
        await base(page)
          .locator(".poured-lines li", { hasText: `${code} ${name}, ${pieces} pieces` })
          .waitFor();
      await check_access(page, "a base is begun");
      await button(page, "Its record: KO-7-1").click();
      await page.locator("main[data-view=record] .batch-code .code", { hasText: "KO-7-1" }).waitFor();
      await page.locator(".blank[data-key='pieces.made']").waitFor();
      assert.equal(await page.locator(".blank[data-key^='base.']").count(), 0, "the base is noted beneath its order");
      await check_access(page, "the record of a line");
      await page.getByRole("button", { name: "Poured from the base KO-7" }).click();
      await page.locator("main[data-view=order]").waitFor();
      await base(page)
        .locator(".batch-code .code", { hasText: /^KO-7$/ })
        .waitFor();
    }),

  "what there is to begin is listed however often the order is costed, and before a price is typed to its end": () =>
    with_page(async (page, serving) => {
      const listed = (pieces) =>
        base(page)
          .locator(".to-begin", { hasText: `The base, for ${pieces} pieces of Plain bars, 6 pieces of` })
          .waitFor();
      await listed(12);
      await page.getByLabel("How often it is made").fill("2, 4");
      await page.locator(".quote-table thead", { hasText: "4 times" }).waitFor();
      await settled(page);
      await page.getByLabel("Pieces").first().fill("10");
      await listed(10);
      await page.getByLabel("How often it is made").fill("2, nothing");
      await page.locator(".quote .complaint").waitFor();
      await page.getByLabel("Pieces").first().fill("8");
      await listed(8);
      await begin(page);
      const [{ lines: poured }] = recorded(serving);
      assert.deepEqual(
        poured.map(({ pieces }) => pieces),
        [8, 6],
      );
      await base(page).getByText("Another making than KO-7").waitFor();
    }),

  "what is noted of a base is the same in two tabs and after a reload": () =>
    with_page(async (page, serving) => {
      const other = await open(chromium, serving.address, wide);
      await open_market(other);
      await begin(page);
      await base(other).locator(".batch-code .code", { hasText: "KO-7" }).waitFor();
      const grams = its_base(serving)
        .blanks.find(({ key }) => key === "base.made")
        .planned.replace(/\D.*$/, "");
      await type(page, "base.made", grams);
      await kept(page, "base.made");
      await kept(other, "base.made");
      assert.equal(its_base(serving).blanks.find(({ key }) => key === "base.made").noted, `${grams} g`);
      await page.reload();
      await kept(page, "base.made");
      assert.equal(await blank(page, "base.made").locator("input").inputValue(), grams);
      check_quiet(other);
      await other.context().close();
    }),

  "an order in a folder below is told at once what was recorded beside it": () =>
    on_page(
      chromium,
      async (page, serving) => {
        const soap = join(serving.folder, "soap");
        mkdirSync(soap);
        for (const [name, json] of Object.entries(own_files())) writeFileSync(join(soap, name), JSON.stringify(json));
        await page.reload();
        await open_market(page);
        const of = (...words) => execFileSync(program, words, { cwd: soap });
        of("note", "market.order.json", "--begin", "--code", "KO-7");
        await base(page)
          .locator(".batch-code .code", { hasText: /^KO-7$/ })
          .waitFor();
        const noted = ["pieces.made=12", "tested=pass", `ready_on=${its_day(soap)}`].flatMap((one) => ["--set", one]);
        of("note", "plain_bars.run.json", ...noted, "--confirmed", its_day(soap));
        of("stock", ".", "--sold", "KO-7-1=12", "--order", "market.order.json", "--confirmed", "KO-7-1=12");
        await page.locator(".ready", { hasText: "12 of 12 are delivered" }).waitFor();
        const runs = page.getByLabel("Run", { exact: true });
        assert.deepEqual(
          await Promise.all([0, 1].map((i) => runs.nth(i).inputValue())),
          market.lines.map(({ run }) => run),
        );
        await page.getByLabel("Another run").selectOption({ label: "Cups from a tray" });
        await page.getByRole("group", { name: "Cups from a tray" }).getByLabel("Pieces").fill("12");
        await settled(page);
        await page.locator(".quote-table", { hasText: "Cups from a tray, 12 pieces" }).waitFor();
      },
      { viewport: wide },
    ),

  "a request that is sent twice begins once, and another making is asked for by name": () =>
    with_page(async (page, serving) => {
      let is_lost = true;
      await page.route("**/api/record/begin", async (route) => {
        if (!is_lost) return route.continue();
        is_lost = false;
        await route.fetch(); // it arrives, and its answer does not
        await route.fulfill({ status: 409, json: { complaint: { problem: "is lost", line: "is lost", field: "" } } });
      });
      await button(page, "Lye is mixed: begin the record").click();
      await button(page, "Begin the record").click();
      await base(page).locator(".begin-record .alarm").waitFor();
      await base(page).locator(".poured-lines").waitFor();
      await button(page, "Begin another making").click();
      await base(page).locator(".begin-record.asked").waitFor({ state: "detached" });
      assert.equal(recorded(serving).length, 1);
      const [{ begun }] = recorded(serving);
      await button(page, `Another making than ${begun.code}`).click();
      await base(page).getByText("There is a record of it already").waitFor();
      await button(page, "Begin another making").click();
      await base(page).locator(".makings button").nth(1).waitFor();
      assert.equal(recorded(serving).length, 2);
      await check_access(page, "two makings of a base");
    }),

  "more lye than planned is asked about before it is noted, and stays in sight": () =>
    with_page(async (page, serving) => {
      await begin(page);
      await button(page, "Another weight than planned").click();
      const { key, planned } = its_base(serving).rows.find(({ role }) => role === "alkali");
      await type(page, key, (Number.parseFloat(planned) * 1.2).toFixed(1));
      await blank(page, key).locator(".alarm[data-lye]", { hasText: "LYE-HEAVY" }).waitFor();
      const row = () => its_base(serving).rows.find((one) => one.key === key);
      assert.equal(row().noted, undefined, "more lye is noted before she has said that it is so");
      await check_access(page, "more lye in a base");
      await blank(page, key)
        .getByRole("button", { name: /^It is so/ })
        .click();
      await kept(page, key);
      assert.ok(row().noted);
      for (const { text } of its_base(serving).as_weighed) await base(page).getByText(text).waitFor();
    }),

  "a line's run begins by itself only once she says so, the order is a tap away, and its base asks about that": () =>
    with_page(async (page, serving) => {
      const words =
        "The order for Market pours this run together with Marbles in a bowl (A), and its base has not been begun.";
      const told = page.locator(".poured-by", { hasText: words });
      const at_the_bench = async () => {
        await open_run(page, "Plain bars 12 pieces", "Weigh");
        await told.waitFor();
        await page.getByRole("button", { name: "Lye is mixed: begin the record", exact: true }).click();
        await page.getByRole("button", { name: "Begin the record", exact: true }).click();
      };
      const asked = page.locator(".begin-record .alarm", { hasText: words });
      await at_the_bench();
      await asked.waitFor();
      await check_access(page, "asked whether a batch is mixed by itself");
      await page.locator(".begin-record").getByRole("button", { name: "To the order", exact: true }).click();
      await base(page).waitFor();
      assert.equal(recorded(serving, "plain_bars.run.json").length, 0, "it begins before she has said so");
      await at_the_bench();
      await asked.waitFor();
      await page.getByRole("button", { name: "This batch is mixed by itself", exact: true }).click();
      await page.locator(".is-begun .code").waitFor();
      const [{ begun, poured_from }] = recorded(serving, "plain_bars.run.json");
      assert.equal(poured_from, null);
      await told.waitFor({ state: "detached" });
      await open_market(page);
      await ask_to_begin(page);
      const was_begun = `Batch 1 of "Plain bars" was begun on ${begun.begun_on} by itself, as ${begun.code}.`;
      await base(page).locator(".begin-record .alarm", { hasText: was_begun }).waitFor();
      await check_access(page, "asked whether a line is made once more");
      await button(page, `It is made once more, besides ${begun.code}`).click();
      await is_begun(page);
      assert.equal(recorded(serving, "plain_bars.run.json").length, 2);
    }),

  "before a line's run is weighed its order is told there, and no more once the base is begun": () =>
    with_page(async (page, serving) => {
      await open_run(page, /^Marbles in a bowl \d+ pieces/, "Weigh");
      await page.locator(".poured-by").waitFor();
      await check_access(page, "an order waits");
      await page.locator(".poured-by").getByRole("button", { name: "To the order" }).click();
      await base(page).waitFor();
      await page.goBack();
      await page.locator(".poured-by").waitFor();
      execFileSync(program, ["note", "market.order.json", "--begin"], { cwd: serving.folder });
      await page.locator(".poured-by").waitFor({ state: "detached" });
    }),

  "the trail leads from a base to its lines and back": () =>
    with_page(async (page, serving) => {
      await begin(page);
      await button(page, "What is in it").click();
      await page.locator(".trail-line", { hasText: "Poured into KO-7-1 KO-7-2" }).waitFor();
      await page.locator(".trail-line").getByRole("button", { name: "KO-7-1", exact: true }).click();
      await page.getByRole("heading", { name: "What is in KO-7-1" }).waitFor();
      const { batches } = serving.printed("trail", ".", "KO-7-1");
      const share = batches.find(({ batch }) => batch === "KO-7-1").poured_from.share_percent;
      await page.locator(".trail-line", { hasText: `Poured from KO-7 (${Math.round(share * 10) / 10} %)` }).waitFor();
      await check_access(page, "the trail of a line");
      await page.getByRole("button", { name: "Its record: KO-7", exact: true }).click();
      await base(page)
        .locator(".batch-code .code", { hasText: /^KO-7$/ })
        .waitFor();
    }),

  "of several bases of an order each has its own records, and a way there finds the right one": () => {
    const files = own_files();
    const more = lines.map(([name, pieces]) => {
      const { id, ...run } = files[`${name}.run.json`];
      files[`more_${name}.run.json`] = { ...run, name: `More ${name}` };
      return { run: `more_${name}.run.json`, pieces, together: "B" };
    });
    files["market.order.json"] = { ...market, lines: [...market.lines, ...more] };
    return with_page(
      async (page, serving) => {
        await begin(page);
        await base(page).getByRole("button", { name: "B", exact: true }).click();
        await page.getByRole("heading", { name: "What really happened: poured together (B)" }).waitFor();
        await base(page).getByText("not begun").waitFor();
        assert.equal(await base(page).locator(".blank").count(), 0, "of the other base");
        await begin(page, "WE-2");
        const codes = (word) =>
          serving.printed("note", "market.order.json", "--together", word).batches.map(({ begun }) => begun.code);
        assert.deepEqual([codes("A"), codes("B")], [["KO-7"], ["WE-2"]]);
        await page.reload();
        await base(page)
          .locator(".batch-code .code", { hasText: /^WE-2$/ })
          .waitFor();
        await to(page, "Shelf");
        await page.getByRole("button", { name: "Its record: KO-7-1", exact: true }).click();
        await page.getByRole("button", { name: "Poured from the base KO-7" }).click();
        await base(page)
          .locator(".batch-code .code", { hasText: /^KO-7$/ })
          .waitFor();
        await check_access(page, "two bases");
      },
      { files },
    );
  },

  "on tablet and phone every field is a finger high, and nothing sticks out": async () => {
    for (const viewport of [
      { width: 820, height: 1180 },
      { width: 390, height: 844 },
    ])
      await with_page(
        async (page) => {
          await begin(page);
          const boxes = await base(page)
            .locator("input:visible, button:visible")
            .evaluateAll((all) =>
              all.map((one) => one.getBoundingClientRect()).map(({ width, height }) => [width, height]),
            );
          assert.ok(boxes.every(([width, height]) => width >= 43.9 && height >= 43.9));
          assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), viewport.width);
        },
        { viewport },
      );
  },
});

await chromium.close();
