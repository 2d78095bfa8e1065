// An order takes pieces that are made already when she says so; what the page tells of them is what the command line tells.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { browser, check_access, check_tablet, examples, on_page, program, run, settled, tablet, to } from "./bench.mjs";

const chromium = await browser();
const bars = "plain_bars.run.json";
const base = "meadow_base.formula.json";
const formula = { ...examples(base)[base], unmould_after: "24 h" };
const studio = {
  schema: "brimwright.studio/1",
  currency: "EUR",
  packs: { olive: [{ holds: "1 kg", paid: "9.00" }], "gift box": [{ holds: "10 pieces", paid: "6.00" }] },
  packaging: [{ material: "gift box", each_piece: "1 piece" }],
  work: { paid_an_hour: "20.00", each_batch: "90 min", each_piece_packed: "1 min" },
  days: { making: { tuesday: "6 h", friday: "6 h" }, pots_owned: 1 },
};
const market = {
  schema: "brimwright.order/1",
  id: "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001",
  for: "Market",
  lines: [{ run: bars, pieces: 24 }],
};

const days_ago = (days) => new Date(Date.now() - days * 24 * 3600 * 1000).toISOString().slice(0, 10);

/** Twelve bars, begun 40 days ago by a formula that cures 35: tested, ready for five. */
function made(serving) {
  const note = (...words) => execFileSync(program, ["note", bars, "--batch", "1", ...words], { cwd: serving.folder });
  note("--begin", "--code", "A1", "--on", days_ago(40), "--confirmed", days_ago(40));
  for (const set of ["pieces.made=12", "tested=pass", `ready_on=${days_ago(5)}`]) note("--set", set);
}

const with_page = (test, viewport = { width: 1180, height: 820 }) =>
  on_page(
    chromium,
    async (page, serving) => {
      made(serving);
      await to(page, "Orders");
      await page.getByRole("button", { name: /^Market/ }).click();
      await page.getByRole("heading", { name: "Market", level: 1 }).waitFor();
      await page.locator(".quote-table:not(.old)").waitFor();
      await test(page, serving);
    },
    {
      viewport,
      files: { ...examples(bars), [base]: formula, "studio.json": studio, "market.order.json": market },
    },
  );

const told = (page) => page.getByRole("group", { name: "Pieces that are made already", exact: true });
const choice = (page) => page.getByLabel("Pieces that are made already", { exact: true }).and(page.locator("select"));
const words = "Plain bars: 12 of 24 stand ready (batch A1), 12 to make.";

async function saved(page, holds) {
  await page.waitForFunction(() =>
    /^Saved in .*order\.json/.test(document.querySelector(".saving")?.textContent ?? ""),
  );
  await holds;
}

await run({
  "they are taken by her word alone, and what is left to make is planned": () =>
    with_page(async (page, serving) => {
      await told(page).getByText("12 pieces that are made already (batch A1) are not taken").waitFor();
      await choice(page).selectOption("take");
      await told(page).getByText(words, { exact: true }).waitFor();
      await page.locator(".days").getByText(words, { exact: true }).waitFor();
      await saved(page);
      assert.equal(serving.file("market.order.json").ready, "take");
      await page.locator(".quote-table:not(.old)", { hasText: "to make" }).waitFor();
      await settled(page);
      const [{ ready, rest, cost, cash }] = serving.printed("quote", "market.order.json").times;
      assert.equal(ready.lines[0].text, words);
      const row = (name) => page.locator(".quote-table tr", { hasText: name }).first().locator("td").innerText();
      assert.deepEqual(
        [await row("made already"), await row("to make"), await row("What is left to make costs")],
        ["12", "12", rest.cost],
      );
      assert.equal(await row("The whole order"), cost);
      assert.equal(await row("To lay out now, in whole packs"), cash.total);
      // No lot was recorded, so nobody knows what the ready ones did cost.
      assert.equal(await row("Materials of what is made already did cost"), "not known");
      await check_access(page, "an order that takes ready pieces");
      await choice(page).selectOption("");
      await told(page).getByText("are not taken").waitFor();
      await saved(page);
      assert.equal(serving.file("market.order.json").ready, undefined);
    }),

  "what was made otherwise is taken by its batch alone, and the way back is there": () =>
    with_page(async (page, serving) => {
      writeFileSync(join(serving.folder, base), JSON.stringify({ ...formula, superfat: "7 %" }));
      await choice(page).selectOption("take");
      const take = page.getByRole("button", { name: "Take the 12 of batch A1 all the same" });
      await take.waitFor();
      await take.click();
      await told(page).getByText(words, { exact: true }).waitFor();
      await told(page).getByText("are taken as the order names that batch").waitFor();
      await saved(page);
      assert.deepEqual(serving.file("market.order.json").lines[0].ready, ["A1"]);
      await page.getByRole("button", { name: "Line 1: as the order says" }).click();
      await take.waitFor();
      await saved(page);
      assert.deepEqual(serving.file("market.order.json").lines, market.lines);
    }),

  "sold to the order they are delivered, and not planned again": () =>
    with_page(async (page, serving) => {
      const sell = ["stock", ".", "--sold", "A1=12", "--order", "market.order.json"];
      execFileSync(program, sell, { cwd: serving.folder });
      await choice(page).selectOption("take");
      await told(page).getByText("Plain bars: 12 of 24 are delivered, 12 to make.", { exact: true }).waitFor();
    }),

  "what is recorded elsewhere while the order is looked at is told at once, and what it got is followed from here":
    () =>
      with_page(async (page, serving) => {
        await choice(page).selectOption("take");
        await told(page).getByText(words, { exact: true }).waitFor();
        await saved(page);
        const record = (...of) => execFileSync(program, of, { cwd: serving.folder });
        record("note", bars, "--batch", "1", "--set", "pieces.rejected=2");
        const fewer = "Plain bars: 10 of 24 stand ready (batch A1), 14 to make.";
        await told(page).getByText(fewer, { exact: true }).waitFor();
        await page.locator(".days").getByText(fewer, { exact: true }).waitFor();
        await page.getByRole("button", { name: "Its batches and their lots" }).click();
        await page
          .locator("[role=alert]", { hasText: "records.sqlite has no pieces that were sold to this order" })
          .waitFor();
        await page.getByRole("button", { name: "Back to the order" }).click();
        await page.getByRole("heading", { name: "Market", level: 1 }).waitFor();
        record("stock", ".", "--sold", "A1=10", "--order", "market.order.json");
        await told(page).getByText("Plain bars: 10 of 24 are delivered, 14 to make.", { exact: true }).waitFor();
        await page.getByRole("button", { name: "Its batches and their lots" }).click();
        await page.getByRole("heading", { name: "What Market got", level: 1 }).waitFor();
        const trail = serving.printed("trail", ".", "market.order.json");
        assert.deepEqual(await page.locator(".pieces-of").evaluateAll((all) => all.map((one) => one.dataset.batch)), [
          "A1",
        ]);
        assert.equal(await page.locator(".trail-rows li").count(), trail.batches[0].rows.length);
        await check_access(page, "the trail of an order");
      }),

  "on a tablet it is tapped with wet hands": () =>
    with_page(async (page) => {
      await choice(page).selectOption("take");
      await told(page).getByText(words, { exact: true }).waitFor();
      await check_tablet(page, "an order that takes ready pieces");
    }, tablet),
});

await chromium.close();
