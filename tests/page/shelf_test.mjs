// What stands on the shelf: lots and pieces as the command line tells of them, acts that are refused or asked about, and the trail.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { browser, check_access, check_tablet, examples, on_page, open_in, program, run, tablet, to } from "./bench.mjs";

const chromium = await browser();
const plain = "plain_bars.run.json";
const wide = { width: 1180, height: 820 };
const phone = { width: 390, height: 844 };

const ago = (days) => {
  const day = new Date(Date.now() - days * 86_400_000);
  return [day.getFullYear(), day.getMonth() + 1, day.getDate()].map((one) => String(one).padStart(2, "0")).join("-");
};

function files() {
  const all = examples(plain, "meadow_base.formula.json");
  delete all[plain].money;
  all["studio.json"] = {
    schema: "brimwright.studio/1",
    currency: "EUR",
    packs: {
      "Olive oil": [{ holds: "5 kg", paid: "27.50" }],
      "Goldmill coconut": [{ holds: "1 kg", paid: "8.00" }],
      "gift box": [{ holds: "50 pieces", paid: "30.00" }],
    },
    serves_as: { "Goldmill coconut": "coconut" },
    lye_solutions: {
      "The jug": { alkali: "NaOH", strength: "50 %", strength_range: ["49 %", "51 %"], kept_at: "20 °C" },
    },
    have: { "gift box": "12 pieces" },
  };
  all["market.order.json"] = {
    schema: "brimwright.order/1",
    id: "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001",
    for: "Harbour market",
    lines: [{ run: plain, pieces: 4 }],
  };
  return all;
}

const asked = (serving, ...words) =>
  execFileSync(program, words, { cwd: serving.folder, encoding: "utf8", stdio: "pipe" });
const stock = (serving) => serving.printed("stock", ".");
const lot = (serving, code) =>
  stock(serving)
    .materials.flatMap(({ lots }) => lots)
    .find((one) => one.lot === code);
const pieces = (serving, batch) => stock(serving).pieces.find((one) => one.batch === batch);

/** Lots, and three batches of them: cured and tested, tested but curing, and just made. */
function stocked(serving) {
  const buy = (...words) => asked(serving, "stock", ".", "--bought", ...words);
  buy(
    "olive oil",
    "--pack",
    "5 kg",
    "--packs",
    "2",
    "--price",
    "27.50",
    "--seller",
    "Oil mill",
    "--lot",
    "OL-12",
    "--on",
    ago(90),
  );
  buy("olive oil", "--pack", "5 kg", "--lot", "OL-13", "--on", ago(80), "--best-before", ago(-100));
  buy(
    "Goldmill coconut",
    "--pack",
    "1 kg",
    "--packs",
    "4",
    "--lot",
    "CO-117",
    "--on",
    ago(90),
    "--best-before",
    ago(-90),
  );
  buy("Goldmill coconut", "--pack", "1 kg", "--lot", "CO-90", "--on", ago(300), "--best-before", ago(20));
  buy("caustic soda", "--pack", "1 kg", "--lot", "NA-1", "--on", ago(90), "--price", "4");
  const codes = [50, 20, 0].map((days) => {
    asked(serving, "note", plain, "--begin", "--again", "--on", ago(days));
    return serving.printed("note", plain).batches.at(-1).begun.code;
  });
  const note = (code, ...values) =>
    asked(serving, "note", plain, "--batch-code", code, ...values.flatMap((one) => ["--set", one]));
  const tested = ["tested=pass", "tested_how=phenolphthalein: clear", `ready_on=${ago(5)}`];
  note(codes[0], "pieces.made=24", "pieces.rejected=1", ...tested);
  note(codes[1], "pieces.made=24", ...tested.slice(0, 2));
  asked(serving, "note", plain, "--batch-code", codes[1], "--set", `ready_on=${ago(5)}`, "--confirmed", ago(5));
  note(codes[2], "pieces.made=24");
  return codes;
}

/** On the shelf of a folder that has lots and pieces. */
const on_shelf = (test, { viewport = wide, is_empty = false } = {}) =>
  on_page(
    chromium,
    async (page, serving) => {
      const codes = is_empty ? [] : stocked(serving);
      await to(page, "Shelf");
      await page.locator(".shelf-part").first().waitFor();
      await test(page, serving, codes);
    },
    { files: files(), words: [plain], viewport },
  );

const main = (page) => page.locator("main");
const button = (within, name) => within.getByRole("button", { name, exact: true });
const row = (page, name) => page.locator(`.lot[data-lot="${name}"]`);
const batch = (page, code) => page.locator(`.lot[data-batch="${code}"]`);
const field = (within, label) => within.getByLabel(label, { exact: true });
const told = (page) => page.locator("#shelf-told");

/** The form that stands open. */
const form = (page) => page.locator("form.shelf-act");

await run({
  "each material has its lots in the order in which they are taken, and what is past its day is a question": () =>
    on_shelf(async (page, serving) => {
      const printed = stock(serving).materials;
      const shown = await page
        .locator(".material")
        .evaluateAll((all) =>
          all.map((one) => [
            one.getAttribute("aria-label"),
            [...one.querySelectorAll(".lot .code")].map((code) => code.textContent),
          ]),
        );
      assert.deepEqual(
        shown,
        printed.map(({ shown_as, lots }) => [shown_as, lots.map((one) => one.lot)]),
      );
      assert.match(await row(page, "coconut:CO-90").innerText(), /which is past\. Is CO-90 still good\?/);
      assert.equal(await page.locator(".past-words").count(), 1);
      assert.match(await row(page, "olive:OL-13").innerText(), /unpriced/);
      assert.match(
        await row(page, "olive:OL-12").innerText(),
        /10 kg.*left of 2 × 5 kg.*from Oil mill.*55\.00 EUR in all/s,
      );
      for (const { lots } of printed)
        for (const one of lots) {
          const kilos = /([\d.]+) (k?)g/.exec(
            await row(page, `${one.material}:${one.lot}`).locator(".lot-left").innerText(),
          );
          const grams = Number(kilos[1]) * (kilos[2] ? 1000 : 1);
          assert.ok(grams <= one.left.g && grams > one.left.g - 1, `${one.lot}: ${kilos[0]} of ${one.left.g} g`);
        }
      await check_access(page, "the shelf");
    }),

  "a lot that came is recorded as it would be by the command line, and without a price it is unpriced": () =>
    on_shelf(async (page, serving) => {
      await button(main(page), "Bought").click();
      assert.equal(await field(form(page), "Bought on").inputValue(), ago(0));
      await field(form(page), "Material").fill("oliv");
      await button(form(page), "Olive oil").click();
      await field(form(page), "One pack holds").fill("5");
      await button(form(page), "Record it as bought").click();
      await form(page).getByText("In which unit?").waitFor(); // 5 of what is not guessed
      await button(form(page), "kg").click();
      await field(form(page), "Packs").fill("2");
      await field(form(page), "Lot number").fill("OL-20");
      await field(form(page), "Best before, if it says so").fill(ago(-400));
      await check_access(page, "a lot that came");
      await button(form(page), "Record it as bought").click();
      await told(page).getByText("lot OL-20").waitFor();
      const there = lot(serving, "OL-20");
      assert.deepEqual(
        [there.material, there.holds.g, there.packs, there.on, there.best_before, there.paid],
        ["olive", 10_000, 2, ago(0), ago(-400), null],
      );
      assert.match(await row(page, "olive:OL-20").innerText(), /unpriced/);
      assert.equal(await form(page).count(), 0);
    }),

  "a slip is asked about, what is refused stays as typed, and neither records anything": () =>
    on_shelf(async (page, serving) => {
      await button(main(page), "Bought").click();
      await field(form(page), "Material").fill("olive oil");
      await field(form(page), "One pack holds").fill("5 g");
      await button(form(page), "Record it as bought").click();
      await form(page).locator("[role=alert]", { hasText: "and this is 5 g" }).waitFor();
      await check_access(page, "a slip is asked about");
      assert.equal(stock(serving).materials.flatMap(({ lots }) => lots).length, 5);
      await field(form(page), "One pack holds").fill("5 kg");
      await field(form(page), "Price of one pack, EUR").fill("27.50 USD");
      await button(form(page), "Record it as bought").click();
      await form(page).locator(".field.wants .complaint", { hasText: "nothing is converted" }).waitFor();
      assert.equal(await field(form(page), "Price of one pack, EUR").inputValue(), "27.50 USD");
      await page.reload();
      await form(page).waitFor();
      assert.equal(await field(form(page), "One pack holds").inputValue(), "5 kg", "a reload loses what was typed");
      await field(form(page), "Price of one pack, EUR").fill("");
      await field(form(page), "Material").fill("yak butter");
      await button(form(page), "Record it as bought").click();
      await button(form(page), "It is so").click();
      await told(page).getByText("yak butter").waitFor();
      assert.equal(stock(serving).materials.find(({ material }) => material === "yak butter").lots.length, 1);
    }),

  "a count puts right what is left, with its reason": () =>
    on_shelf(async (page, serving) => {
      await button(row(page, "olive:OL-13"), "Counted: lot OL-13").click();
      await field(form(page), "There now").fill("3.2");
      await button(form(page), "kg").click();
      await field(form(page), "Why, if it is not what was left").fill("a leaking tap");
      await button(form(page), "Record the count").click();
      await told(page).getByText("Counted: 3.2 kg").waitFor();
      assert.equal(lot(serving, "OL-13").left.g, 3200);
      const [{ why }] = serving.printed("trail", ".", "OL-13").lots[0].counts;
      assert.equal(why, "a leaking tap");
    }),

  "another tab sees what is recorded, and what has changed unseen is asked about": () =>
    on_shelf(async (page, serving, [first]) => {
      const other = await open_in(page.context(), serving.address, "Shelf");
      await button(batch(other, first), `Sold: pieces of ${first}`).click();
      await field(form(other), "Pieces").fill("2");
      await button(batch(page, first), `Sold: pieces of ${first}`).click();
      await field(form(page), "Pieces").fill("2");
      await field(form(page), "For whom")
        .or(field(form(page), "Or for whom"))
        .fill("Ana");
      await button(form(page), "Record them as sold").click();
      await told(page).waitFor();
      await batch(other, first).getByText("21 there").first().waitFor();
      await button(form(other), "Record them as sold").click();
      await form(other).locator("[role=alert]", { hasText: "21 pieces are there by the records now" }).waitFor();
      assert.equal(pieces(serving, first).sold, 2, "what was asked about is recorded");
      await button(form(other), "Record it even so").click();
      await told(other).waitFor();
      assert.equal(pieces(serving, first).sold, 4);
      asked(serving, "stock", ".", "--spoilt", `${first}=1`);
      await batch(page, first).getByText("18 there").first().waitFor();
      await other.close();
    }),

  "pieces go to an order; untested ones are refused, and those that still cure are asked about": () =>
    on_shelf(async (page, serving, [cured, curing, untested]) => {
      for (const one of stock(serving).pieces) {
        const words = await batch(page, one.batch).innerText();
        assert.ok(words.includes(`${one.there} there`) && words.includes(`${one.made} made`), words);
        assert.equal(/✓ for sale|noted as ready/.test(words), one.for_sale, words);
        assert.equal(/cures until/.test(words), one.cures_until !== null, words);
      }
      const sell = async (code, many) => {
        await button(batch(page, code), `Sold: pieces of ${code}`).click();
        await field(form(page), "Pieces").fill(many);
        await button(form(page), "Record them as sold").click();
      };
      await sell(untested, "3");
      await form(page).locator(".complaint, .alarm", { hasText: "has no test result" }).waitFor();
      assert.equal(
        await form(page).getByRole("button", { name: "It is so" }).count(),
        0,
        "no word sells what is untested",
      );
      await button(form(page), "Leave it").click();
      await sell(curing, "3");
      await form(page).locator("[role=alert]", { hasText: "cures until" }).waitFor();
      assert.equal(pieces(serving, curing).sold, 0);
      await button(form(page), "Leave it").click();
      await sell(cured, "30");
      await form(page).locator(".complaint, .alarm", { hasText: "23 are there, and 30 are to go" }).waitFor();
      await field(form(page), "Pieces").fill("4");
      await form(page)
        .getByRole("button", { name: /^Harbour market/ })
        .click();
      await button(form(page), "Record them as sold").click();
      await told(page).getByText("sold for Harbour market").waitFor();
      assert.equal(serving.printed("trail", ".", "market.order.json").batches[0].went[0].pieces, -4);
      await button(batch(page, untested), `Spoilt: pieces of ${untested}`).click();
      await field(form(page), "Pieces").fill("1");
      await button(form(page), "Record them as spoilt").click();
      await told(page).waitFor();
      assert.equal(pieces(serving, untested).spoilt, 1);
    }),

  "a lot is followed to its batches, their pieces and whoever has them, and back": () =>
    on_shelf(async (page, serving, [cured, , untested]) => {
      asked(serving, "stock", ".", "--sold", `${cured}=3`, "--order", "market.order.json");
      const codes = () =>
        main(page)
          .locator(".pieces-of")
          .evaluateAll((all) => all.map((one) => one.dataset.batch));
      await button(row(page, "coconut:CO-117"), "Where it went: lot CO-117").click();
      await page.locator("h1", { hasText: "Where lot CO-117 went" }).waitFor();
      assert.deepEqual(
        await codes(),
        serving.printed("trail", ".", "CO-117").batches.map((one) => one.batch),
      );
      assert.deepEqual(await codes(), [untested]);
      await check_access(page, "the trail of a lot");
      await button(batch(page, untested), untested).click();
      await page.locator("h1", { hasText: `What is in ${untested}` }).waitFor();
      const { rows } = serving.printed("trail", ".", untested).batches[0];
      assert.equal(await page.locator(".trail-rows li").count(), rows.length);
      await button(page.locator(".trail-rows"), "NA-1").click();
      await page.locator("h1", { hasText: "Where lot NA-1 went" }).waitFor();
      assert.equal((await codes()).length, 3);
      await button(batch(page, cured), "Harbour market").click();
      await page.locator("h1", { hasText: "What Harbour market got" }).waitFor();
      await page.goBack();
      await page.locator("h1", { hasText: "Where lot NA-1 went" }).waitFor();
      await page.reload();
      await page.locator("h1", { hasText: "Where lot NA-1 went" }).waitFor();
      await page.emulateMedia({ media: "print" });
      assert.ok(await button(batch(page, cured), cured).isVisible(), "paper does not name the batch");
      assert.ok(!(await button(main(page), "Print").isVisible()));
      await page.emulateMedia({ media: null });
      await to(page, "Shelf");
      await page.locator("#find-trail").fill("CO-711");
      await button(main(page), "Follow it").click();
      await page.locator("[role=alert]", { hasText: 'did you mean "CO-117"?' }).waitFor();
    }),

  "where a lot and a batch are called the same, it is asked which is meant": () =>
    on_shelf(async (page, serving, [cured]) => {
      asked(serving, "stock", ".", "--bought", "castor oil", "--pack", "1 kg", "--lot", cured, "--on", ago(60));
      await page.locator("#find-trail").fill(cured);
      await button(main(page), "Follow it").click();
      await page.locator("[role=alert]", { hasText: `"${cured}" is a lot and a batch: which is meant?` }).waitFor();
      await check_access(page, "a code of a lot and of a batch");
      await button(main(page), `The lot ${cured}`).click();
      await page.locator("h1", { hasText: `Where lot ${cured} went` }).waitFor();
      await page.goBack();
      await button(main(page), `The batch ${cured}`).click();
      await page.locator("h1", { hasText: `What is in ${cured}` }).waitFor();
      await to(page, "Shelf");
      await button(batch(page, cured), `What is in it: ${cured}`).click();
      await page.locator("h1", { hasText: `What is in ${cured}` }).waitFor();
    }),

  "lye that she made is of a lot, which loses what is in it; what the studio lists is taken over": () =>
    on_shelf(async (page, serving) => {
      const before = lot(serving, "NA-1").left.g;
      await button(main(page), "Made of others").click();
      await button(form(page), "The jug").click();
      await field(form(page), "It makes").fill("500 g");
      await button(form(page), "What of which lot is in it").click();
      await field(form(page), "Lot").selectOption("NaOH:NA-1");
      await field(form(page), "So much of it").fill("250");
      await button(form(page), "Record it as made").click();
      await form(page).getByText("In which unit is it?").waitFor();
      await form(page)
        .getByRole("group", { name: "Unit of what is taken, 1" })
        .getByRole("button", { name: "g", exact: true })
        .click();
      await field(form(page), "Lot number").fill("JUG-1");
      await check_access(page, "a lot that she made");
      await button(form(page), "Record it as made").click();
      await told(page).getByText("lot JUG-1").waitFor();
      assert.equal(lot(serving, "JUG-1").origin, "made");
      assert.equal(lot(serving, "NA-1").left.g, before - 250);
      await button(main(page), "Take it over as lots, once").click();
      await told(page).getByText("12 pieces of gift box").waitFor();
      assert.deepEqual(stock(serving).not_counted, []);
    }),

  "what was weighed otherwise than planned is taken from its lot, and more lye is shouted before it is noted": () =>
    on_shelf(async (page, serving, [, , last]) => {
      const weight = (key) =>
        serving.printed("note", plain, "--batch-code", last).batches[0].rows.find((one) => one.key === key);
      const [olive, alkali] = ["weighed.pour.fats.olive", "weighed.pour.lye.naoh"];
      const planned = Number.parseFloat(weight(alkali).planned);
      const before = { olive: lot(serving, "OL-13").left.g, alkali: lot(serving, "NA-1").left.g };
      await button(batch(page, last), `Its record: ${last}`).click();
      await button(main(page), "Another weight than planned").click();
      const blank = (key) => page.locator(`.blank[data-key="${key}"]`);
      const type = async (key, text) => {
        await blank(key).locator("input").fill(text);
        await blank(key).locator("input").press("Tab");
      };
      await type(olive, String(Number.parseFloat(weight(olive).planned) + 6));
      await blank(olive).locator(".stands.kept").waitFor();
      assert.equal(lot(serving, "OL-13").left.g, before.olive - 6);
      await type(alkali, String(planned * 1.2));
      await blank(alkali).locator(".alarm", { hasText: "LYE-HEAVY" }).waitFor();
      await check_access(page, "more lye than planned");
      assert.equal(lot(serving, "NA-1").left.g, before.alkali, "what is asked about is taken");
      await blank(alkali)
        .getByRole("button", { name: /^It is so/ })
        .click();
      await page.locator(".record .alarm", { hasText: "LYE-HEAVY" }).first().waitFor();
      await blank(alkali).locator(".stands.kept").waitFor();
      assert.equal(lot(serving, "NA-1").left.g, before.alkali - planned * 0.2);
      await type(alkali, "");
      await blank(alkali).locator(".stands").waitFor({ state: "detached" });
      assert.equal(lot(serving, "NA-1").left.g, before.alkali);
      await button(main(page), "What is in it").click();
      await page.locator("h1", { hasText: `What is in ${last}` }).waitFor();
    }),

  "by the keyboard alone, and what is done is where the keyboard goes on": () =>
    on_shelf(async (page, serving) => {
      await button(row(page, "NaOH:NA-1"), "Counted: lot NA-1").focus();
      await page.keyboard.press("Enter");
      await page.locator(".part-title:focus").waitFor();
      await page.keyboard.press("Tab");
      await page.keyboard.type("600 g");
      await page.keyboard.press("Enter");
      await page.locator("#shelf-told:focus").waitFor();
      assert.equal(lot(serving, "NA-1").left.g, 600);
    }),

  "on a tablet and on a telephone nothing is too small or sticks out": async () => {
    await on_shelf(
      async (page, serving, [first]) => {
        await button(main(page), "Bought").click();
        await button(batch(page, first), `Sold: pieces of ${first}`).click();
        await check_tablet(page, "the shelf");
        await button(batch(page, first), `What is in it: ${first}`).click();
        await page.locator(".trail-rows").first().waitFor();
        await check_tablet(page, "the trail");
      },
      { viewport: tablet },
    );
    await on_shelf(
      async (page) => {
        await button(main(page), "Bought").click();
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), phone.width);
      },
      { viewport: phone },
    );
  },

  "a folder without records says so, and the first lot begins them": () =>
    on_shelf(
      async (page, serving) => {
        await page.getByText("Nothing is recorded in this folder yet.").waitFor();
        await check_access(page, "an empty shelf");
        await button(main(page), "Bought").click();
        await field(form(page), "Material").fill("olive");
        await field(form(page), "One pack holds").fill("5 kg");
        await button(form(page), "Record it as bought").click();
        await told(page).getByText("a code of your own: write it on the pack").waitFor();
        assert.equal(lot(serving, "L1").material, "olive");
      },
      { is_empty: true },
    ),
});
await chromium.close();
