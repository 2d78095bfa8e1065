// What really happened to a batch: its record begins at the weights and is filled in at the bench, and nothing typed is lost.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { browser, check_access, examples, on_page, program, root, run, settled, to } from "./bench.mjs";

const chromium = await browser();
const spring = "spring_cups.run.json";
const wide = { width: 1180, height: 820 };
const phone = { width: 390, height: 844 };
const upright = { width: 820, height: 1180 };

function own_files() {
  const files = examples(...readdirSync(join(root, "examples")).filter((name) => name.endsWith(".json")));
  for (const file of Object.values(files)) delete file.$schema;
  return files;
}

async function to_weights(page) {
  await to(page, "Weigh");
  await page.locator(".weighing .weigh:visible").first().waitFor();
  await settled(page);
}

const with_page = (test, { viewport = wide, files = own_files(), words = [spring] } = {}) =>
  on_page(chromium, test, { files, words, viewport, begin: to_weights });

const main = (page) => page.locator("main");
const button = (page, name) => main(page).getByRole("button", { name, exact: true });
const blank = (page, key) => page.locator(`.blank[data-key="${key}"]`);
const kept = (page, key) => blank(page, key).locator(".stands.kept").waitFor();

async function begin(page) {
  await button(page, "Lye is mixed: begin the record").click();
  await button(page, "Begin the record").click();
  await page.locator(".is-begun .code").waitFor();
  return page.locator(".is-begun .code").innerText();
}

async function begin_and_note(page) {
  const code = await begin(page);
  await button(page, "Note what happens").click();
  await page.locator(".record .blank").first().waitFor();
  return code;
}

async function type(page, key, text) {
  const field = blank(page, key).locator("input");
  await field.fill(text);
  await field.press("Tab");
}

const recorded = (serving, batch = "1") => serving.printed("note", spring, "--batch", batch).batches.at(-1);
const noted = (serving, key) => recorded(serving).blanks.find((one) => one.key === key).noted;
const note = (serving, ...words) => execFileSync(program, ["note", spring, ...words], { cwd: serving.folder });

await run({
  "the record begins at the weights, with a code of the day, and once however often it is asked": () =>
    with_page(async (page, serving) => {
      assert.equal(await page.locator(".begin-record > button.strong").count(), 0, "nothing is ticked");
      for (const row of await page.locator(".part-of.base .vessel.lye .weigh label").all()) await row.click();
      await page.locator(".part-of.base .begin-record > button.strong").waitFor();
      await check_access(page, "the lye is ticked");
      const code = await begin(page);
      assert.match(code, /^\d{4}-\d\d-\d\dA$/);
      assert.equal(recorded(serving).begun.code, code);
      await check_access(page, "the record is begun");
      await page.reload();
      await page.locator(".is-begun .code", { hasText: code }).waitFor();
      assert.equal(serving.printed("note", spring).batches.length, 1);
    }),

  "another code is hers; one that was given is refused in its field": () =>
    with_page(async (page, serving) => {
      const code = await begin(page);
      await button(page, "Change the code").click();
      await page.getByLabel("Another code").fill("Spring 7");
      await button(page, "Use this code").click();
      await page.locator(".code", { hasText: "Spring 7" }).waitFor();
      assert.equal(recorded(serving).begun.code, "Spring 7");
      await button(page, "Change the code").click();
      await page.getByLabel("Another code").fill("no/way?");
      await button(page, "Use this code").click();
      await page.locator(".batch-code .complaint").waitFor();
      assert.equal(await page.getByLabel("Another code").inputValue(), "no/way?");
      assert.notEqual(code, "Spring 7");
    }),

  "every blank of the sheet is a field, in its order, with what is planned beside it": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      const { blanks } = recorded(serving);
      const shown = await page.locator(".record .blank").evaluateAll((all) => all.map((one) => one.dataset.key));
      assert.deepEqual(
        shown,
        blanks.map(({ key }) => key),
      );
      for (const { key, planned } of blanks.filter((one) => one.planned && one.kind !== "weighing"))
        assert.equal(await blank(page, key).locator(".planned b").innerText(), planned);
      await check_access(page, "the record");
    }),

  "what is typed is noted when the field is left, or when the hand rests": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      const { planned } = recorded(serving).blanks.find((one) => one.key === "base.made");
      const grams = planned.replace(/\D.*$/, "");
      await type(page, "base.made", grams);
      await kept(page, "base.made");
      assert.equal(noted(serving, "base.made"), `${grams} g`);
      await blank(page, "base.trace").locator("input").fill("12");
      await kept(page, "base.trace");
      assert.equal(noted(serving, "base.trace"), "12 min");
      await type(page, "base.trace", "");
      await blank(page, "base.trace").locator(".stands").waitFor({ state: "detached" });
      assert.equal(noted(serving, "base.trace"), undefined);
    }),

  "a number of degrees is taken for neither scale before she has said which": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      await type(page, "base.fats_at", "104");
      await blank(page, "base.fats_at").locator(".complaint").waitFor();
      await page.reload();
      await blank(page, "base.fats_at").locator(".complaint").waitFor();
      assert.equal(await blank(page, "base.fats_at").locator("input").inputValue(), "104");
      assert.equal(noted(serving, "base.fats_at"), undefined);
      await blank(page, "base.fats_at").getByRole("button", { name: "°F" }).click();
      await kept(page, "base.fats_at");
      assert.equal(noted(serving, "base.fats_at"), "104 °F");
    }),

  "off the line is above it or below it, and nothing is noted before that is said": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      await type(page, "pour.line_off", "2");
      await blank(page, "pour.line_off").locator(".complaint").waitFor();
      assert.equal(noted(serving, "pour.line_off"), undefined);
      await blank(page, "pour.line_off").getByRole("button", { name: "below" }).click();
      await kept(page, "pour.line_off");
      assert.equal(noted(serving, "pour.line_off"), "-2 mm");
    }),

  "what is far from usual is asked about, what is nonsense refused; both stay in the field, over a reload too": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      await type(page, "base.room_at", "70 °C");
      await blank(page, "base.room_at").getByRole("button", { name: "It is so: note 70 °C" }).waitFor();
      await type(page, "base.made", "a lot");
      await blank(page, "base.made").locator(".complaint").waitFor();
      await check_access(page, "two that were not taken");
      await page.reload();
      await blank(page, "base.made").locator(".complaint").waitFor();
      assert.equal(await blank(page, "base.made").locator("input").inputValue(), "a lot");
      assert.equal(noted(serving, "base.made"), undefined);
      await blank(page, "base.room_at").getByRole("button", { name: "It is so: note 70 °C" }).click();
      await kept(page, "base.room_at");
      assert.equal(noted(serving, "base.room_at"), "70 °C");
      assert.equal(await blank(page, "base.made").locator("input").inputValue(), "a lot");
    }),

  "what is typed while the program is down is kept over a reload, and noted once when it is back": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      await page.route("**/api/record/note", (route) => route.abort());
      await type(page, "base.trace", "12");
      await blank(page, "base.trace").locator(".stands.waiting").waitFor();
      await page.reload();
      await blank(page, "base.trace").locator(".stands.waiting").waitFor();
      assert.equal(await blank(page, "base.trace").locator("input").inputValue(), "12");
      await page.unroute("**/api/record/note");
      await kept(page, "base.trace");
      assert.equal(noted(serving, "base.trace"), "12 min");
      page.said = page.said.filter((line) => !/ERR_FAILED/.test(line));
    }),

  "an answer that is lost changes nothing: the act is asked again under its own id": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      const acts = [];
      await page.route("**/api/record/note", async (route) => {
        acts.push(JSON.parse(route.request().postData()).act);
        if (acts.length > 1) return route.continue();
        await route.fetch(); // it is done, and nobody hears of it
        await route.abort();
      });
      await type(page, "base.trace", "12");
      await kept(page, "base.trace");
      assert.equal(acts.length, 2);
      assert.equal(acts[0], acts[1]);
      assert.equal(noted(serving, "base.trace"), "12 min");
      page.said = page.said.filter((line) => !/ERR_FAILED/.test(line));
    }),

  "what another hand notes is shown, and neither is written over the other unasked": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      note(serving, "--batch", "1", "--set", "base.trace=14 min");
      await kept(page, "base.trace");
      assert.equal(await blank(page, "base.trace").locator("input").inputValue(), "14");
      await blank(page, "minutes.making").locator("input").fill("9");
      note(serving, "--batch", "1", "--set", "minutes.making=50 min");
      await blank(page, "minutes.making").locator("input").press("Tab");
      await blank(page, "minutes.making").getByRole("button", { name: "Keep 50 min" }).waitFor();
      assert.equal(noted(serving, "minutes.making"), "50 min");
      await blank(page, "minutes.making").getByRole("button", { name: "Note 9 min in its place" }).click();
      await kept(page, "minutes.making");
      assert.equal(noted(serving, "minutes.making"), "9 min");
    }),

  "a weigh-cup that is read at the weights goes into its blank": () =>
    with_page(async (page, serving) => {
      await begin(page);
      const cup = recorded(serving).blanks.find((one) => /^topping(-\d+)?\.cup$/.test(one.key));
      const grams = cup.planned.replace(/[^\d.].*$/, "");
      await page.locator("#weigh-cup").fill(grams);
      await page.locator("#weigh-cup").press("Tab");
      await button(page, "Note what happens").click();
      const cups = recorded(serving).blanks.filter((one) => /^topping(-\d+)?\.cup$/.test(one.key));
      if (cups.length > 1) await button(page, `Note ${grams} g, as read at the weights`).first().click();
      await kept(page, cup.key);
      assert.equal(noted(serving, cup.key), `${grams} g`);
    }),

  "cured pieces are weighed with their day, and taken back": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      await page.getByLabel("Pieces", { exact: true }).fill("2");
      await page.getByLabel("Weight together, g", { exact: true }).fill("150");
      await button(page, "Note this weighing").click();
      await page.locator(".weighings li .kept").waitFor();
      const [weighing] = recorded(serving).cured;
      assert.deepEqual([weighing.pieces, weighing.written], [2, "150 g"]);
      await page.locator(".weighings li button").click();
      await page.locator(".weighings li").waitFor({ state: "detached" });
      assert.deepEqual(recorded(serving).cured, []);
    }),

  "nothing is for sale without a test that was passed, and the page says so": () =>
    with_page(async (page, serving) => {
      await begin_and_note(page);
      const sale = page.locator(".sale");
      assert.match(await sale.innerText(), /Not for sale: .*test/);
      const today = recorded(serving).begun.begun_on;
      await type(page, "ready_on", today);
      await blank(page, "ready_on").locator(".complaint").waitFor();
      assert.equal(noted(serving, "ready_on"), undefined);
      await type(page, "tested_how", "pH strip");
      await blank(page, "tested").getByRole("button", { name: "pass" }).click();
      await kept(page, "tested");
      // What it was refused for is well now, but it is a question whether it has cured.
      await blank(page, "ready_on").locator(".complaint", { hasText: "is to cure for" }).waitFor();
      assert.equal(noted(serving, "ready_on"), undefined);
      await blank(page, "ready_on").getByRole("button", { name: "It is so" }).click();
      await kept(page, "ready_on");
      assert.match(await sale.innerText(), /^\W*For sale/);
      await type(page, "held_back", "smells odd");
      await page.locator(".sale", { hasText: "Not for sale" }).waitFor();
      assert.equal(recorded(serving).for_sale, false);
    }),

  "shares of one pot are noted as they were weighed, more lye is asked about, and bought decorations are counted":
    () => {
      const files = own_files();
      const star = { name: "Star", material: "sugar star", bought: { weighs: "2 g" }, per_piece: 1, spares: "0 %" };
      files[spring] = { ...files[spring], lye_pot: {}, decorations: [...files[spring].decorations, star] };
      return with_page(
        async (page, serving) => {
          serving.printed("stock", ".", "--bought", "sugar star", "--pack", "100 pieces", "--lot", "ST-1");
          await begin_and_note(page);
          const left = () =>
            serving
              .printed("stock", ".")
              .materials.flatMap(({ lots }) => lots)
              .find((one) => one.lot === "ST-1").left.pieces;
          const counted = left();
          await type(page, "decoration-2.used", "50");
          await kept(page, "decoration-2.used");
          assert.equal(left(), 50);
          assert.notEqual(counted, 50);
          await button(page, "Another weight than planned").click();
          const [base, topping] = ["weighed.pour.share.lye-solution", "weighed.pipe.share.lye-solution"];
          const row = (key) => recorded(serving).rows.find((one) => one.key === key);
          await type(page, base, String(Number.parseFloat(row(base).planned) + 10));
          const said = blank(page, base).locator(".alarm");
          await said.filter({ hasText: "Meadow base as it was weighed: superfat" }).waitFor();
          await said.filter({ hasText: "one of these weights is wrong or not noted yet" }).waitFor();
          assert.equal(row(base).noted, undefined, "more lye is noted before she has said that it is so");
          await check_access(page, "more lye in a share");
          await blank(page, base)
            .getByRole("button", { name: /^It is so/ })
            .click();
          await kept(page, base);
          await type(page, topping, String(Number.parseFloat(row(topping).planned) - 10));
          await kept(page, topping);
          const { as_weighed } = recorded(serving);
          assert.equal(as_weighed.length, 2);
          for (const { text } of as_weighed) await main(page).getByText(text).waitFor();
        },
        { files },
      );
    },

  "a second making has a record of its own, and both are a tap away": () =>
    with_page(async (page, serving) => {
      const first = await begin(page);
      await button(page, "This batch is done").click();
      await button(page, "The batch is done all the same").click();
      await button(page, "Start this batch anew").click();
      await button(page, "Put it away and weigh this batch once more").click();
      await button(page, "Lye is mixed: begin the record").click();
      await page.getByText("There is a record of it already").waitFor();
      await button(page, "Begin another making").click();
      await page.locator(".is-begun .code", { hasNotText: first }).waitFor();
      await to(page, "Record");
      await page.locator(".makings button").nth(1).waitFor();
      assert.equal(await page.locator(".makings button").count(), 2);
      await page.locator(".makings button", { hasText: first }).click();
      await page.locator(".batch-code .code", { hasText: first }).waitFor();
      await check_access(page, "two makings");
      assert.equal(serving.printed("note", spring).batches.length, 2);
    }),

  "a built-in example becomes a run of her own when its record begins": () =>
    with_page(
      async (page, serving) => {
        await begin_and_note(page);
        assert.equal(serving.printed("note", spring).batches.length, 1);
        assert.equal(serving.file(spring).sell, JSON.parse(readFileSync(join(root, "examples", spring), "utf8")).sell);
      },
      { files: {}, words: [] },
    ),

  "on tablet and phone every field is a finger high, one a line, and nothing sticks out": async () => {
    for (const viewport of [upright, phone])
      await with_page(
        async (page) => {
          await begin_and_note(page);
          const boxes = await page
            .locator(".record :is(input, button)")
            .evaluateAll((all) =>
              all.map((one) => one.getBoundingClientRect()).map(({ width, height }) => [width, height]),
            );
          assert.ok(boxes.every(([width, height]) => width >= 43.9 && height >= 43.9));
          const fields = await page
            .locator(".blank-value > input")
            .evaluateAll((all) =>
              all.map((one) => one.getBoundingClientRect()).map(({ top, height }) => [top, height]),
            );
          assert.ok(
            fields.every(([, height]) => height >= 52.9),
            "14 mm for wet hands",
          );
          assert.equal(new Set(fields.map(([top]) => top)).size, fields.length, "one a line");
          assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), viewport.width);
          await check_access(page, `the record at ${viewport.width}`);
        },
        { viewport },
      );
  },
});

await chromium.close();
