// The view that a run opens on: what is weighed for one batch, ticked off, and frozen from the first tick on.
import assert from "node:assert/strict";
import { readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { browser, check_access, check_quiet, examples, on_page, open_in, root, run, settled, to } from "./bench.mjs";

const chromium = await browser();
const spring = "spring_cups.run.json";
const base = "meadow_base.formula.json";
const wide = { width: 1180, height: 820 };
const phone = { width: 390, height: 844 };

/** The example as a run of her own, changed. */
function own_files(change = () => {}) {
  const files = examples(...readdirSync(join(root, "examples")).filter((name) => name.endsWith(".json")));
  for (const file of Object.values(files)) delete file.$schema;
  change(files);
  return files;
}

async function to_weights(page) {
  await to(page, "Weigh");
  await page.locator(".weighing .weigh:visible").first().waitFor();
  await settled(page);
}

/** A tab in which nothing was typed may be asked all the same which text is to stay. */
async function told_of_change(page, how = ".changed") {
  const asked = page.getByRole("button", { name: "Load the saved file" });
  await page.locator(how).or(asked).first().waitFor();
  if (await asked.count()) await asked.click();
  await page.locator(how).first().waitFor();
}

const with_page = (change, test, viewport = wide) =>
  on_page(chromium, test, { files: own_files(change), words: [spring], viewport, begin: to_weights });

const as_it_is = () => {};
const weighing = (page) => page.locator(".weighing");
const row = (page, name, within = ".part-of.base") => page.locator(`${within} .weigh`, { hasText: name }).first();
const box = (page, name, within) => row(page, name, within).getByRole("checkbox");
const amount = (page, name, within) => row(page, name, within).locator(".amount b").innerText();
const button = (page, name) => weighing(page).getByRole("button", { name, exact: true });
const sent = (page) => page.locator(".weighing:not(:has(.waiting))").waitFor();

async function tick(page, name, within) {
  await row(page, name, within).locator("label").click();
  await sent(page);
}

/** Whole or not at all, as editors write. */
function write(serving, name, change) {
  const path = join(serving.folder, name);
  const json = JSON.parse(readFileSync(path, "utf8"));
  change(json);
  writeFileSync(`${path}.new`, `${JSON.stringify(json, null, 2)}\n`);
  renameSync(`${path}.new`, path);
}

const with_share = (fat, share) => (formula) => (formula.fats.find((one) => one.fat === fat).share = share);

/** More olive oil, less coconut: other weights in every vessel of the base. */
const more_olive = (formula) => (with_share("olive", "45 %")(formula), with_share("coconut", "20 %")(formula));

/** Each row's key and texts as the page has them. */
const shown_rows = (page) =>
  page.locator(".weighing .weigh").evaluateAll((rows) =>
    rows.map((one) => ({
      name: [...one.querySelector(".name").childNodes]
        .filter((node) => node.nodeType === Node.TEXT_NODE)
        .map((node) => node.textContent)
        .join("")
        .trim(),
      amount: one.querySelector(".amount b").textContent,
      beside: one.querySelector(".amount i")?.textContent ?? "",
    })),
  );

const by_text = (rows) => rows.map(({ name, amount, beside }) => `${name}: ${amount}, ${beside}`).sort();

/** What is weighed of a batch, as the command line prints it. */
const printed_rows = (plan, number) =>
  plan.batches
    .find(({ numbers }) => numbers.includes(number))
    .weigh_out.filter(({ vessel }) => vessel !== "melt" || number === 1)
    .flatMap(({ rows }) => rows)
    .map(({ name, shown, beside }) => ({ name, amount: shown, beside }));

const check_rows = async (page, plan, number) =>
  assert.deepEqual(by_text(await shown_rows(page)), by_text(printed_rows(plan, number)));

/** The boxes of all that is shown of these. */
const boxes = (page, selector) =>
  page.locator(selector).evaluateAll((all) =>
    all
      .filter((one) => one.checkVisibility())
      .map((one) => one.getBoundingClientRect())
      .map(({ top, bottom, height, width, right }) => ({ top, bottom, height, width, right })),
  );

await run({
  "a run opens on its weights, which are the command line's, without a tap": () =>
    with_page(as_it_is, async (opened, serving) => {
      const page = await opened.context().newPage();
      await page.goto(serving.address);
      await page.locator(".weighing .weigh").first().waitFor();
      await check_rows(page, serving.printed("plan", spring), 1);
      const lye = await page.locator(".part-of.base .vessel.lye .weigh .name").allInnerTexts();
      const first = (role) => lye.findIndex((one) => one.toLowerCase().includes(role));
      assert.ok(first("water") < first("naoh"), "water before alkali");
      await check_access(page, "the weights");
    }),

  "at 1180 x 820 both batters stand on one screen, and a row is its tick box": () =>
    with_page(as_it_is, async (page) => {
      const rows = await boxes(page, ":is(.part-of.base, .part-of.topping) .vessel:not(.layers) .weigh label");
      assert.ok(rows.length >= 20);
      assert.ok(Math.min(...rows.map(({ top }) => top)) >= 0);
      const lowest = Math.max(...rows.map(({ bottom }) => bottom));
      assert.ok(lowest <= wide.height, `the lowest row ends at ${lowest}`);
      assert.ok(rows.every(({ height, width }) => height >= 40 && width >= 300));
      const layers = await boxes(page, ".vessel.layers .weigh label");
      assert.ok(
        layers.every(({ height }) => height >= 52.9),
        "14 mm for what is tapped in mid-pour",
      );
      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), wide.width);
      const fields = await page.locator(".weighing input:not([type=checkbox])").count();
      assert.equal(fields, 2, "the number of pieces and today's weigh-cup");
    }),

  "on a phone one batter stands on the screen, and the other a tap away": () =>
    with_page(
      as_it_is,
      async (page) => {
        assert.equal(await page.locator(".part-of.topping .weigh").first().isVisible(), false);
        const [first] = await boxes(page, ".part-of.base .weigh label");
        assert.ok(first.top <= phone.height / 3, `the first row begins at ${first.top}`);
        const [[title], [choice], [number]] = await Promise.all(
          ["#run-title", ".narrow", ".weighing-head .field"].map((one) => boxes(page, one)),
        );
        const [batch] = await boxes(page, ".weighing-head .choice");
        assert.ok(title.height <= 32, `the title is ${title.height} px high`);
        assert.ok(
          Math.abs(batch.top + batch.bottom - number.top - number.bottom) <= 8,
          "pieces and batches on one line",
        );
        assert.ok(first.top - choice.bottom <= 40, "the choice of batter stands right above what is weighed");
        for (const [name, part] of [
          ["Base", ".part-of.base"],
          ["Topping", ".part-of.topping"],
        ]) {
          await weighing(page)
            .getByRole("button", { name: new RegExp(`^(✓ )?${name}$`) })
            .click();
          const all = await boxes(page, ".weighing .weigh label");
          const rows = await boxes(page, `${part} .vessel:not(.layers) .weigh label`);
          assert.ok(rows.length >= 8 && all.length >= rows.length);
          const high = rows.at(-1).bottom - rows[0].top;
          const [bar] = await boxes(page, ".bar");
          assert.ok(high <= bar.top, `the ${name} is ${high} px high, and the bar begins at ${bar.top}`);
          assert.ok(rows.every(({ height, right }) => height >= 40 && right <= phone.width));
        }
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), phone.width);
        await check_access(page, "the weights on a phone");
        await button(page, "Melt, dust").click();
        assert.ok((await boxes(page, ".weighing .weigh label")).length >= 2);
      },
      phone,
    ),

  "the first tick freezes the batch: another tab changes the formula, and its weights stay until it is begun anew":
    () =>
      with_page(as_it_is, async (page, serving) => {
        const before = await amount(page, "Olive oil");
        const plan = serving.printed("plan", spring);
        await tick(page, "Olive oil");
        assert.ok(await box(page, "Olive oil").isChecked());
        const other = await open_in(page.context(), serving.address, "Weigh");
        await settled(other);
        assert.ok(await box(other, "Olive oil").isChecked(), "a second tab has the tick");
        await other.close();

        write(serving, base, more_olive);
        const changed = page.locator(".changed");
        await told_of_change(page);
        await settled(page);
        const now = printed_rows(serving.printed("plan", spring), 1).find(({ name }) => name === "Olive oil").amount;
        assert.notEqual(now, before);
        assert.ok((await changed.innerText()).includes(`Olive oil ${before}, now ${now}`), await changed.innerText());
        await check_rows(page, plan, 1);
        await check_access(page, "what has changed since");

        await button(page, "Keep weighing").click();
        await button(page, "What has changed").waitFor();
        const labels = page.locator(".weighing .weigh label");
        for (let i = 0; i < (await labels.count()); ++i)
          if (!(await labels.nth(i).getByRole("checkbox").isChecked())) await labels.nth(i).click();
        await sent(page);
        await check_rows(page, plan, 1);
        const rows = printed_rows(plan, 1).length;
        await page.locator(".which", { hasText: `${rows} of ${rows} weighed` }).waitFor();
        await check_access(page, "all is weighed");
        await button(page, "This batch is done").click();
        await page.locator(".batch-end", { hasText: "This batch is done" }).waitFor();
        await check_access(page, "a batch that is done");

        await weighing(page)
          .getByRole("group", { name: "Which batch is weighed" })
          .getByRole("button", { name: /2/ })
          .click();
        await check_rows(page, serving.printed("plan", spring), 2);
        assert.equal(await page.locator(".weighing input:checked").count(), 0, "the next batch has the new weights");
      }),

  "starting anew asks once more, and takes the new weights": () =>
    with_page(as_it_is, async (page, serving) => {
      await tick(page, "Olive oil");
      write(serving, base, more_olive);
      await told_of_change(page);
      await settled(page);
      await button(page, "Start this batch anew").click();
      await page.locator(".changed", { hasText: "will be put away" }).waitFor();
      assert.ok(await box(page, "Olive oil").isChecked(), "nothing is put away before she has said so");
      await check_access(page, "asked once more");
      await button(page, "Put the ticks away and start anew").click();
      await page.locator(".changed").waitFor({ state: "detached" });
      await check_rows(page, serving.printed("plan", spring), 1);
      assert.equal(await page.locator(".weighing input:checked").count(), 0);
    }),

  "ticks outlast a reload and a restart, and one that the program does not have yet is marked and sent": async () => {
    const files = own_files();
    await on_page(
      chromium,
      async (page, serving) => {
        await tick(page, "Olive oil");
        await page.reload();
        await settled(page);
        assert.ok(await box(page, "Olive oil").isChecked());
        await serving.stop();
        await row(page, "Coconut oil").locator("label").click();
        assert.ok(await box(page, "Coconut oil").isChecked(), "shown at once");
        await row(page, "Coconut oil").locator(".not-kept").waitFor();
        await page.locator(".bench-told .alarm", { hasText: "Not kept yet" }).waitFor();
        await check_access(page, "a tick that is not kept yet");
        await serving.start();
        await page.goto(serving.address);
        await page.reload();
        await settled(page);
        await sent(page);
        for (const name of ["Olive oil", "Coconut oil"]) assert.ok(await box(page, name).isChecked(), name);
        page.said.length = 0; // what the browser said of a server that was away
      },
      { files, words: [spring], viewport: wide, begin: to_weights },
    );
  },

  "a tab sees what another ticks": () =>
    with_page(as_it_is, async (page, serving) => {
      const other = await open_in(page.context(), serving.address, "Weigh");
      await settled(other);
      await tick(page, "Castor oil");
      await other.waitForFunction(() => document.querySelectorAll(".weighing input:checked").length === 1);
      await tick(other, "Castor oil");
      await page.waitForFunction(() => document.querySelectorAll(".weighing input:checked").length === 0);
      check_quiet(other);
    }),

  "a tick on weights that have just changed is not taken, and the new ones are shown": () =>
    with_page(as_it_is, async (page, serving) => {
      await page.route("**/api/bench/tick", async (route) => {
        const asked = route.request().postDataJSON();
        await route.continue({ postData: JSON.stringify({ ...asked, seen: "another" }) });
      });
      await row(page, "Olive oil").locator("label").click();
      await page.locator(".bench-told .alarm", { hasText: "changed just now" }).waitFor();
      assert.equal(await page.locator(".weighing input:checked").count(), 0);
      await page.unroute("**/api/bench/tick");
      await settled(page);
      await check_rows(page, serving.printed("plan", spring), 1);
      await check_access(page, "weights that changed just now");
      await tick(page, "Olive oil");
      assert.equal(await page.locator(".bench-told .alarm").count(), 0);
    }),

  "danger stands above the weights and beside the lye that it is about, with a way to its cause": () =>
    with_page(
      (files) => (files[base].superfat = "0 %"),
      async (page) => {
        await page.locator(".foremost p.danger").first().waitFor();
        await page.locator(".part-of.base .vessel.lye p.danger").first().waitFor();
        assert.equal(await page.locator(".part-of.topping .vessel p.danger").count(), 0, "it is not the topping's");
        await check_access(page, "danger among the weights");
        await button(page, "To the superfat of the base").first().click();
        await page.waitForFunction(() => document.activeElement?.id === "f-pour-superfat");
      },
    ),

  "a change that draws danger is told in red, and the begun weights stay without it": () =>
    with_page(as_it_is, async (page, serving) => {
      await tick(page, "Olive oil");
      const before = await shown_rows(page);
      write(serving, base, (formula) => (formula.superfat = "0 %"));
      await told_of_change(page, ".changed.red p.danger");
      await check_access(page, "a change that draws danger");
      assert.deepEqual(await shown_rows(page), before);
      write(serving, base, with_share("olive", "39 %")); // the fats do not add up any more: refused
      await told_of_change(page, ".changed.red:has-text('No weights can be given')");
      assert.equal(await button(page, "Start this batch anew").count(), 0);
      assert.deepEqual(await shown_rows(page), before);
      assert.equal(await page.locator(".weighing .amount.old").count(), 0, "they may be weighed");
      await page.reload();
      await page.locator(".weighing .weigh").first().waitFor();
      assert.deepEqual(await shown_rows(page), before, "after a reload as well");
    }),

  "today's weigh-cup is the batch's, and says how far this bowl goes": () =>
    with_page(as_it_is, async (page, serving) => {
      const cup = page.getByLabel("Today's weigh-cup, net");
      await cup.fill("84");
      await cup.press("Enter");
      await page.locator(".cup .today b").waitFor();
      await sent(page);
      assert.equal(await cup.inputValue(), "84 g");
      const run = serving.file(spring);
      run.pipe.whip_now = { holds: "120 ml", net: "84 g" };
      writeFileSync(join(serving.folder, "told.run.json"), JSON.stringify({ ...run, id: undefined }));
      const [{ pieces_now }] = serving.printed("plan", "told.run.json").batches[0].pipe.whippings;
      assert.match(await page.locator(".cup .today").innerText(), new RegExp(`pipes ${pieces_now} pieces now`));
      assert.deepEqual(serving.file(spring).pipe.whip_now, { holds: "120 ml", net: "76.2 g" }, "the run stays");
      await page.reload();
      await settled(page);
      assert.equal(await cup.inputValue(), "84 g");
      await page.locator(".cup .today b").waitFor();
      await check_access(page, "today's weigh-cup");
    }),

  "a weight says how it is calculated, without being ticked": () =>
    with_page(as_it_is, async (page) => {
      await row(page, "Olive oil").getByRole("button", { name: "How the weight of Olive oil is calculated" }).click();
      await row(page, "Olive oil").locator(".sum .formula").waitFor();
      assert.equal(await box(page, "Olive oil").isChecked(), false);
    }),

  "every weight says how it is calculated: lye made the day before, and shares of one pot, too": async () => {
    const of_one_pot = (files) => (files[spring].lye_pot = {});
    for (const [change, lye] of [
      [as_it_is, "Lye solution made yesterday"],
      [of_one_pot, "Lye solution from the shared pot"],
    ])
      await with_page(change, async (page) => {
        const mute = await page
          .locator(".weighing .weigh:not(:has(.ask-how)) .name")
          .evaluateAll((names) => names.map((one) => one.textContent.trim()));
        assert.deepEqual(mute, []);
        for (const ask of await page.locator(".weighing .ask-how").all()) await ask.click();
        await page.locator(".weighing .sum .formula").first().waitFor();
        await page.waitForFunction(() => !document.querySelector(".sum .old"));
        const told = await page
          .locator(".weighing .weigh")
          .evaluateAll((rows) =>
            rows.map((one) => [
              one.querySelector(".name").textContent.trim(),
              one.querySelector(".sum .formula")?.textContent,
            ]),
          );
        for (const [name, formula] of told) assert.ok(formula, `${name} does not say how`);
        assert.ok(told.some(([name]) => name.startsWith(lye)));
        await check_access(page, `how all of it is calculated, ${lye}`);
      });
  },

  "by keyboard alone a batch is ticked, and the focus stays on what was ticked": () =>
    with_page(as_it_is, async (page) => {
      await page.locator("#main").focus();
      const named = () =>
        page.evaluate(() => document.activeElement.closest(".weigh")?.querySelector(".name").innerText ?? "");
      for (let i = 0; i < 60 && !(await named()).startsWith("Olive oil"); ++i) await page.keyboard.press("Tab");
      await page.keyboard.press("Space");
      await sent(page);
      assert.ok(await box(page, "Olive oil").isChecked());
      assert.match(await named(), /^Olive oil/);
    }),

  "printed, it is a list without buttons": () =>
    with_page(as_it_is, async (page) => {
      await page.emulateMedia({ media: "print" });
      assert.equal((await boxes(page, ".weighing button")).length, 0);
      assert.equal((await boxes(page, ".weighing .weigh")).length, await page.locator(".weighing .weigh").count());
    }),

  "in the dark it reads as well": () =>
    with_page(as_it_is, async (page) => {
      await page.emulateMedia({ colorScheme: "dark" });
      await tick(page, "Olive oil");
      await check_access(page, "the weights in the dark");
    }),
});

await chromium.close();
