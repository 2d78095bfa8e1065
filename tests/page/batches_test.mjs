// What is weighed is weighed for one batch, and never the run's sum under a batch's name; the figures are the command line's own.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import {
  browser,
  check_access,
  check_tablet,
  examples,
  figure,
  on_page,
  open_all,
  open_run,
  opened,
  printed_rows,
  root,
  run,
  saved,
  settled,
  tablet,
  to,
  weighed_rows,
} from "./bench.mjs";

const chromium = await browser();
const spring = "spring_cups.run.json";

/** A folder of her own with the example in it, changed. */
function with_page(change, test, viewport) {
  const files = examples(...readdirSync(join(root, "examples")).filter((name) => name.endsWith(".json")));
  delete files[spring].$schema;
  change(files[spring]);
  return on_page(chromium, test, { files, words: [spring], viewport });
}

/** 25 pieces to make, and 24 cavities to make them in. */
function one_too_many(example) {
  example.sell = 24;
  example.pour.moulds_owned = 4;
  delete example.batch;
}

const any_size = (example) => delete example.pipe.bowl.whisk_needs;
const field = (page, label) => page.getByLabel(label, { exact: true });
const press = (page, name, within = "main") =>
  page.locator(within).getByRole("button", { name, exact: true }).first().click();
const unfold = (page) => page.locator("summary", { hasText: /^Batches/ }).click();
const planned = async (page, serving) => {
  await settled(page);
  await saved(page);
  return serving.printed("plan", spring);
};

/** What the figures of these places are called, and their first numbers, in their order. */
const figures = (page, within) =>
  page.locator(within).evaluateAll((all) =>
    all.flatMap((place) =>
      [...place.querySelectorAll(".figure .line")].map((line) => [
        [...line.querySelector(".name").childNodes]
          .filter((node) => node.nodeType === Node.TEXT_NODE)
          .map((node) => node.textContent)
          .join("")
          .trim(),
        Number.parseFloat(line.querySelector(".value b").textContent),
      ]),
    ),
  );

const weights = (some) => some.map((one) => [one.name, one.g]);
const tenth = (grams) => Math.round(grams * 10) / 10;

/** What is weighed of the batch of that number is this, and the set-up's sums are those of the largest. */
async function check_batch(page, plan, which = 0) {
  const { numbers } = plan.batches[which];
  await to(page, "Weigh");
  if (plan.pieces.batches > 1)
    await page
      .locator(".weighing")
      .getByRole("button", { name: new RegExp(`\\b${numbers[0]}\\b`) })
      .first()
      .click();
  assert.deepEqual((await weighed_rows(page)).sort(), printed_rows(plan.batches[which], numbers.includes(1)).sort());
  await to(page, "Set up");
  const { pour, pipe, pieces } = plan.batches[0];
  assert.equal(await figure(page, "Base to make", ".lane.pour"), tenth(pour.make_g));
  assert.equal(await figure(page, "Topping to make", ".lane.pipe"), tenth(pipe.make_g));
  assert.deepEqual(
    await figures(page, ".lane.pour .more"),
    pour.layers.flatMap((layer) => [[layer.name, layer.g], ...weights(layer.colours)]),
  );
  if (plan.pieces.batches > 1)
    assert.match(await page.locator(".lane.pour .order").innerText(), new RegExp(`for one batch, ${pieces} pieces`));
}

await run({
  "25 pieces in 24 cavities are a batch of 13 and one of 12, each with its own weights under its name": () =>
    with_page(one_too_many, async (page, serving) => {
      const plan = serving.printed("plan", spring);
      assert.deepEqual(
        plan.batches.map((one) => one.pieces),
        [13, 12],
      );
      await check_batch(page, plan, 0);
      await check_access(page, "two sizes of batch");
      await check_batch(page, plan, 1);
    }),

  "the batch that is weighed stays chosen while the order is typed": () =>
    with_page(
      (example) => (one_too_many(example), any_size(example)),
      async (page, serving) => {
        await field(page, "Below brim").fill("7 mm");
        await check_batch(page, await planned(page, serving), 1);
        await field(page, "Pieces to sell").fill("");
        await field(page, "Pieces to sell").pressSequentially("26", { delay: 120 }); // 2 pieces are one batch, of one size
        const plan = await planned(page, serving);
        assert.deepEqual(
          plan.batches.map((one) => one.pieces),
          [14],
        ); // 28 to make, 14 and 14
        await check_batch(page, plan);
        await field(page, "Pieces to sell").fill("25");
        const uneven = await planned(page, serving);
        assert.equal(uneven.batches.length, 2);
        await check_batch(page, uneven, 1);
      },
    ),

  "a wish for smaller batches makes other batches, told near the number of pieces": () =>
    with_page(
      (example) => (one_too_many(example), any_size(example)),
      async (page, serving) => {
        await unfold(page);
        await field(page, "Most pieces in a batch").fill("10");
        const plan = await planned(page, serving);
        assert.deepEqual(serving.file(spring).batch, { pieces: 10 });
        assert.ok(plan.batches.every((one) => one.pieces <= 10));
        await check_batch(page, plan);
        const told = await page.locator(".order-of").innerText();
        assert.ok(told.includes(`Made in ${plan.pieces.batches} batches`), told);
        assert.ok(told.includes(`${plan.pieces.fillings} fillings of 24 cavities`), told);
        const sets = plan.batch_limits.filter((one) => one.sets);
        assert.ok(sets.length);
        for (const one of [...sets, ...plan.around]) assert.ok(told.includes(one.text), `${one.text}: not told`);
        await press(page, "All of them, the rest to stock");
        const full = await planned(page, serving);
        assert.equal(full.pieces.to_stock, 48 - 25 + 0);
        assert.match(
          await page.locator(".order-of").innerText(),
          new RegExp(`${full.pieces.to_stock} pieces beyond those to sell go to stock`),
        );
        await check_access(page, "batches by a wish");
      },
    ),

  "what the whole run takes is named so, and stands nowhere under a batch": () =>
    with_page(one_too_many, async (page, serving) => {
      const plan = serving.printed("plan", spring);
      await to(page, "Piece");
      await page.getByRole("heading", { name: /^To have ready for the whole run/ }).waitFor();
      const titles = await page.locator(".needs h3").allInnerTexts();
      assert.ok(
        titles.every((one) => /whole run/.test(one)),
        titles.join(", "),
      );
      const ready = await figures(page, ".needs");
      for (const one of [...plan.pour.ingredients, ...plan.pipe.ingredients, ...plan.dust])
        assert.ok(
          ready.some(([name, value]) => name === one.name && value === one.g),
          `${one.name} ${one.g}`,
        );
      const weighed = (await weighed_rows(page)).map(([, amount]) => Number.parseFloat(amount));
      for (const sum of [plan.pour.make_g, plan.pipe.make_g, plan.pour.naoh_g, plan.pipe.naoh_g].map(tenth))
        assert.ok(!weighed.includes(sum), `${sum} g of the whole run stands under a batch`);
      await to(page, "Piece");
      const naoh = page.locator(".needs .figure", { hasText: "NaOH" }).first();
      await opened(naoh);
      const rows = await naoh
        .locator(".sum tr")
        .evaluateAll((all) =>
          all.map((row) => [
            row.querySelector("td + td").textContent,
            Number.parseFloat(row.querySelector("td").textContent),
          ]),
        );
      const summed = rows.reduce((sum, [often, grams]) => sum + Number(/^(\d+) of these$/.exec(often)[1]) * grams, 0);
      assert.ok(Math.abs(summed - plan.pour.naoh_g) < 1e-6, `${JSON.stringify(rows)} for ${plan.pour.naoh_g}`);
      await to(page, "Set up");
      assert.match(await page.locator(".lane.decorate .order").innerText(), /for the whole run/);
    }),

  "a topping whipped in two goes has a weighing for each, and the run that takes it away asks for none": () =>
    with_page(
      (example) => {
        one_too_many(example);
        example.pour.moulds_owned = 5;
      },
      async (page, serving) => {
        await unfold(page);
        await field(page, "Whippings a batch").fill("2");
        const plan = await planned(page, serving);
        const [batch] = plan.batches;
        assert.deepEqual(
          batch.pipe.whippings.map((one) => one.pieces),
          [13, 12],
        );
        await check_batch(page, plan);
        const titles = await page.locator(".lane.pipe .weights .whipping").allInnerTexts();
        assert.deepEqual([...new Set(titles)], ["One whipping: 13 pieces", "One whipping: 12 pieces"]);
        const now = await figures(page, ".lane.pipe .weights");
        assert.deepEqual(
          now.filter(([name]) => name === "Enough for").map(([, value]) => value),
          batch.pipe.whippings.map((one) => one.pieces_now),
        );
        for (const button of await page.locator(".lane.pipe .figure button").all()) await button.click();
        await check_access(page, "two whippings with their arithmetic");
        await press(page, "Take the topping away");
        await page.waitForFunction(
          () => !document.querySelector(".lane.pipe") && document.documentElement.dataset.settled === "true",
        );
        await saved(page);
        assert.equal(serving.file(spring).batch, undefined);
      },
    ),

  "one pot of lye for a base and two whippings tells the share of each": () =>
    with_page(
      (example) => {
        one_too_many(example);
        example.pour.moulds_owned = 5;
        example.batch = { whippings: 2 };
        example.pipe.formula = example.pour.formula;
        example.lye_pot = {};
        example.bottles = [{ name: "lavender essential oil", holds: "50 g" }];
      },
      async (page, serving) => {
        const [batch] = serving.printed("plan", spring).batches;
        assert.equal(batch.lye_pot.shares.length, 3);
        const shown = await figures(page, ".lane.lye");
        assert.deepEqual(
          shown.filter(([name]) => name.startsWith("Out of it")),
          batch.lye_pot.shares.map((one) => [`Out of it for ${one.batter}`, one.lye_g]),
        );
        for (const button of await page.locator(".lane.lye .figure button", { hasText: "Out of it" }).all())
          await button.click();
        for (const one of batch.bottles[0].parts)
          assert.equal(await figure(page, `Into the ${one.part.toLowerCase()}`), one.g);
        await page.locator(".lane.lye .sum").last().locator(".formula").first().waitFor();
        const sum = await page.locator(".lane.lye .sum").last().innerText();
        for (const { batter } of batch.lye_pot.shares) assert.ok(sum.includes(`alkali for ${batter}`), sum);
      },
    ),

  "pots, batches and moulds are said with their units, and emptied they leave the file": () =>
    with_page(
      (example) => {
        any_size(example);
        delete example.pots;
        delete example.batch;
        delete example.pour.moulds_owned;
      },
      async (page, serving) => {
        await unfold(page);
        await field(page, "Twisted cup, owned").fill("8");
        await field(page, "Pot for the base holds").fill("5");
        await field(page, "Lye jug holds").fill("1800 ml");
        await field(page, "Most pieces in a batch").fill("24");
        await field(page, "Bead tray, owned").fill("2");
        const plan = await planned(page, serving);
        const file = serving.file(spring);
        assert.deepEqual(
          [file.pots, file.batch, file.pour.moulds_owned, file.decorations[0].moulds_owned],
          [{ holds: "5 l", lye_jug: "1800 ml" }, { pieces: 24 }, 8, 2],
        );
        assert.equal(plan.pieces.cavities, 48);
        assert.ok(["pot", "lye jug", "wish"].every((what) => plan.batch_limits.some((one) => one.what === what)));
        await check_access(page, "pots and batches");
        for (const label of [
          "Twisted cup, owned",
          "Pot for the base holds",
          "Lye jug holds",
          "Most pieces in a batch",
          "Bead tray, owned",
        ])
          await field(page, label).fill("");
        await planned(page, serving);
        const bare = serving.file(spring);
        assert.deepEqual(
          ["pots" in bare, "batch" in bare, "moulds_owned" in bare.pour, "moulds_owned" in bare.decorations[0]],
          [false, false, false, false],
        );
      },
    ),

  "a loaf's batch is wished for in loaves": () =>
    with_page(
      () => undefined,
      async (page, serving) => {
        await open_run(page, /^Tilted loaf.* tilted_loaf/, "Set up");
        await field(page, "Pieces to sell").fill("30");
        await unfold(page);
        await field(page, "Loaf, short, owned").fill("3");
        await field(page, "Most loaves in a batch").fill("2");
        await settled(page);
        await saved(page);
        assert.deepEqual(serving.file("tilted_loaf.run.json").batch, { casts: 2 });
        const [batch] = serving.printed("plan", "tilted_loaf.run.json").batches;
        assert.equal(batch.casts, 2);
        assert.ok(
          (await page.locator(".lane.pour .order").innerText()).includes(
            `one batch, ${batch.pieces} bars from 2 loaves`,
          ),
        );
        assert.equal(await figure(page, "Base to make", ".lane.pour"), tenth(batch.pour.make_g));
      },
    ),

  "batches that cannot be made are complained of with what mends it, and not as a danger": () =>
    with_page(
      () => undefined,
      async (page) => {
        const ordinary = async (words, within) => {
          await page.locator(".complaints .alarm", { hasText: words }).waitFor();
          await page.locator(`${within} .complaint`, { hasText: words }).first().waitFor();
          assert.equal(await page.locator(".foremost p.danger").count(), 0, "no danger is told");
        };
        await unfold(page);
        await field(page, "Most pieces in a batch").fill("6");
        await ordinary(/no batch size works[\s\S]*it takes a wish of at least/, ".order-of");
        await check_access(page, "no size of batch that fits");
        await field(page, "Most pieces in a batch").fill("");
        await settled(page);
        await field(page, "Pieces to sell").fill("4");
        await ordinary(/the whisk needs as much; plan \d+ pieces to sell/, ".order-of");
        await field(page, "Pieces to sell").fill("46");
        await settled(page);
        await field(page, "Pot for the base holds").fill("50 ml");
        await page.getByRole("button", { name: "It is really so: keep it" }).first().click();
        await ordinary(/too little for even 1 piece/, ".lane.studio");
        await field(page, "Pot for the base holds").fill("5 l");
        await settled(page);
      },
    ),

  "a batch too small for the scales is an ordinary complaint, and a soap lye-heavy is not": () =>
    with_page(
      () => undefined,
      async (page) => {
        const refuse = (problem, lye_heavy) =>
          page.route("**/api/plan", (route) =>
            route.fulfill({
              status: 422,
              contentType: "application/json",
              body: JSON.stringify({
                complaint: {
                  file: spring,
                  field: "/batch",
                  problem,
                  remedy: "it takes moulds with 12 cavities or more",
                  line: "",
                  lye_heavy,
                },
              }),
            }),
          );
        // Words that only sound like it: no meaning is read out of them.
        await refuse(
          "no batch size works: a batch is at least 12 pieces, as these scales cannot weigh the base of fewer with a superfat above zero, and at most 6 pieces. The moulds have 6 cavities to fill at a time.",
        );
        await field(page, "Pieces to sell").fill("45");
        await page.locator(".complaints .alarm", { hasText: "no batch size works" }).waitFor();
        assert.equal(await page.locator(".foremost p.danger").count(), 0);
        await page.unroute("**/api/plan");
        await refuse("on these scales it would burn", true);
        await field(page, "Pieces to sell").fill("44");
        await page.locator(".foremost p.danger", { hasText: "it would burn" }).waitFor();
        await page.unroute("**/api/plan");
        await field(page, "Pieces to sell").fill("46");
        await settled(page);
      },
    ),

  "a danger that one size of batch has stands beside that size alone, and in sight for the run": () =>
    with_page(one_too_many, async (page) => {
      await page.route("**/api/plan", async (route) => {
        const answer = await route.fetch();
        const plan = await answer.json();
        plan.cautions.unshift({
          severity: "danger",
          topic: "plan",
          general: false,
          text: "Base, half a batch: LYE-HEAVY SOAP MAY COME OUT of Meadow base.",
          batter: "pour",
          batch_pieces: 12,
        });
        await route.fulfill({ response: answer, json: plan });
      });
      await field(page, "Below brim").fill("5 mm");
      await page.locator(".foremost p.danger", { hasText: "Base, half a batch" }).waitFor();
      await settled(page);
      await to(page, "Weigh");
      const lye = page.locator(".part-of.base .vessel.lye");
      await lye.waitFor();
      assert.equal(await lye.locator("p.danger").count(), 0, "the batch of 13 has no such danger");
      await page.locator(".weighing").getByRole("button", { name: /\b2\b/ }).first().click();
      await lye.locator("p.danger", { hasText: "Base, half a batch" }).waitFor();
      await check_access(page, "a danger of one batch");
    }),

  "a run of one batch names its pieces, and has nothing else about batches": () =>
    with_page(
      (example) => {
        example.sell = 20;
        delete example.batch;
      },
      async (page, serving) => {
        const plan = serving.printed("plan", spring);
        assert.equal(plan.pieces.batches, 1);
        assert.equal((await page.locator(".needs").count()) + (await page.getByLabel("The sheet is for").count()), 0);
        assert.doesNotMatch(await page.locator(".order-of").innerText(), /Made in/);
        await check_batch(page, plan);
      },
    ),

  "a sheet is made of all batches, or of one": () =>
    with_page(one_too_many, async (page, serving) => {
      const plan = serving.printed("plan", spring);
      const naoh = plan.batches.map((one) => `${one.pour.naoh_g.toFixed(1)} g`);
      assert.notEqual(naoh[0], naoh[1]);
      await to(page, "Print");
      const sheet = async (choose) => {
        await field(page, "The sheet is for").selectOption({ label: choose });
        const [download] = await Promise.all([
          page.waitForEvent("download"),
          page.getByRole("button", { name: "Bench sheet, PDF" }).click(),
        ]);
        const path = join(serving.folder, download.suggestedFilename());
        await download.saveAs(path);
        const text = String(execFileSync("pdftotext", ["-layout", path, "-"]));
        return { name: download.suggestedFilename(), has: naoh.map((grams) => text.includes(grams)) };
      };
      assert.deepEqual(await sheet("batch 2 of 2: 12 pieces"), {
        name: "spring_cups batch 2.pdf",
        has: [false, true],
      });
      assert.deepEqual(await sheet("batch 1 of 2: 13 pieces"), {
        name: "spring_cups batch 1.pdf",
        has: [true, false],
      });
      assert.deepEqual(await sheet("the whole run"), { name: "spring_cups.pdf", has: [true, true] });
      await field(page, "The sheet is for").selectOption({ label: "batch 2 of 2: 12 pieces" });
      const [printed] = await Promise.all([
        page.context().waitForEvent("page"),
        page.getByRole("button", { name: "Bench sheet, to print" }).click(),
      ]);
      await printed.waitForLoadState();
      const words = await printed.locator("body").innerText();
      assert.deepEqual(
        naoh.map((grams) => words.includes(grams)),
        [false, true],
      );
      await printed.close();
      await to(page, "Set up");
      await field(page, "Pieces to sell").fill("20"); // one batch: there is no second to print
      await settled(page);
      await saved(page);
      await to(page, "Print");
      const [whole] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Bench sheet, PDF" }).click(),
      ]);
      assert.equal(whole.suggestedFilename(), "spring_cups.pdf");
    }),

  "on a tablet two sizes of batch are large enough for a finger": () =>
    with_page(
      one_too_many,
      async (page) => {
        await open_all(page);
        await check_tablet(page, "two sizes of batch, all open");
      },
      tablet,
    ),
});
await chromium.close();
