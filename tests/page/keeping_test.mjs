// Nothing typed is lost: by a reload, a sleep, a restart of the program, or another hand in the file.
import assert from "node:assert/strict";
import { existsSync, readdirSync, readFileSync, renameSync, unlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import {
  browser,
  check_access,
  check_quiet,
  first_batch,
  open,
  open_in,
  root,
  run,
  saved,
  Serving,
  settled,
  to,
} from "./bench.mjs";

const chromium = await browser();
const sell = (page) => page.getByLabel("Pieces to sell", { exact: true });

async function begun() {
  const serving = await new Serving().start();
  const page = await open(chromium, serving.address);
  await settled(page);
  return { serving, page };
}

async function ended({ serving, page }) {
  await page.context().close();
  await serving.end();
}

const json_of = (name) => JSON.parse(readFileSync(`${root}/${name}`, "utf8"));
const superfat = (page) => page.locator("#f-pour-superfat");
const press = (page, name) => page.getByRole("button", { name, exact: true }).click();
const naoh = (page) =>
  page.locator(".part-of.base .vessel.lye .weigh", { hasText: "NaOH" }).locator(".amount b").innerText();
const underneath = (page) => page.getByRole("heading", { name: /was changed outside this page/ });

/** What another hand changed, and the figures are of as it is now. */
const taken_in = (page) => page.locator(".foremost .taken-in");

/** A run, its formulas, mould, fats and tips, all of her own. */
function own_files() {
  const order = json_of("examples/spring_cups.run.json");
  const base = json_of("examples/meadow_base.formula.json");
  const mould = json_of("moulds/twisted_cup.json");
  delete mould.mesh;
  order.pour.mould = "cup.json";
  Object.assign(order.pipe.beads, { tip: "open star, large", own_tips: "studio.tips.json" });
  delete order.pipe.trials;
  base.own_fats = "studio.fats.json";
  base.fats.find((one) => one.fat === "castor").fat = "argan_studio";
  return {
    "spring_cups.run.json": order,
    "meadow_base.formula.json": base,
    "cloud_topping.formula.json": json_of("examples/cloud_topping.formula.json"),
    "studio.fats.json": json_of("examples/studio.fats.json"),
    "studio.tips.json": json_of("examples/studio.tips.json"),
    "cup.json": mould,
  };
}

/** What lies in this browser and in no file. */
const unsaved_names = (page) =>
  page.evaluate(() => Object.keys(localStorage).filter((name) => name.startsWith("unsaved ")));

/** Whole or not at all, as editors write. */
function write(serving, name, json) {
  const path = join(serving.folder, name);
  writeFileSync(`${path}.new`, `${JSON.stringify(json, null, 2)}\n`);
  renameSync(`${path}.new`, path);
}

async function begun_with_own() {
  const serving = new Serving();
  const files = own_files();
  for (const [name, json] of Object.entries(files)) write(serving, name, json);
  await serving.start();
  const page = await open(chromium, serving.address);
  await settled(page);
  return { serving, page, files };
}

/** From now on the page hears nothing of changes to a file before it writes it itself. */
const deafen = async (page, name) => {
  await page.route("**/api/changed?*", (route) => {
    const url = new URL(route.request().url());
    url.searchParams.delete(`file:${name}`);
    return route.continue({ url: url.href });
  });
  // What it waits for already is over as soon as it asks for itself.
  await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
};

await run({
  "a reload in the middle of typing keeps what was typed": async () => {
    const at = await begun();
    await sell(at.page).fill("33");
    await at.page.reload(); // sooner than it is written
    await settled(at.page);
    assert.equal(await sell(at.page).inputValue(), "33");
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").sell, 33);
    check_quiet(at.page);
    await ended(at);
  },

  "a restart of the program keeps it, and the page goes on by itself while it is away": async () => {
    const at = await begun();
    await sell(at.page).fill("21");
    await saved(at.page);
    const port = at.serving.port;
    await at.serving.stop();
    await sell(at.page).fill("22"); // with nobody to save it
    await at.page.getByText("Brimwright is not running").first().waitFor();
    await check_access(at.page, "without the program");
    await at.serving.start();
    assert.equal(at.serving.port, port, "a folder's port is its own");
    await at.page.goto(at.serving.address);
    await at.page.reload();
    await settled(at.page);
    assert.equal(await sell(at.page).inputValue(), "22");
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").sell, 22);
    await ended(at);
  },

  "a file that was changed outside this page while something was typed asks, and either may stay": async () => {
    const at = await begun();
    await sell(at.page).fill("24");
    await saved(at.page);
    const path = join(at.serving.folder, "spring_cups.run.json");
    // Whole or not at all, as editors write.
    const theirs = () => {
      writeFileSync(`${path}.new`, readFileSync(path, "utf8").replace(/"sell": \d+/, '"sell": 50'));
      renameSync(`${path}.new`, path);
    };
    await deafen(at.page, "spring_cups.run.json");
    theirs();
    await sell(at.page).fill("23");
    await underneath(at.page).waitFor();
    await check_access(at.page, "a file was changed outside this page");
    await at.page.getByRole("button", { name: "Load the saved file" }).click();
    await settled(at.page);
    assert.equal(await sell(at.page).inputValue(), "50");
    await sell(at.page).fill("25");
    await saved(at.page);
    theirs();
    await sell(at.page).fill("26");
    await at.page.getByRole("button", { name: "Overwrite it with this page" }).click();
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").sell, 26);
    check_quiet(at.page);
    await ended(at);
  },

  "a run that is no JSON any more does not stand in the way of the others": async () => {
    const at = await begun();
    await sell(at.page).fill("24");
    await saved(at.page);
    await at.page.goto("about:blank");
    writeFileSync(join(at.serving.folder, "spring_cups.run.json"), "{ half a run");
    await at.page.goto(at.serving.address);
    await settled(at.page);
    assert.equal(await sell(at.page).inputValue(), "46"); // the example again
    check_quiet(at.page);
    await ended(at);
  },

  "two tabs on one run do not write over each other": async () => {
    const at = await begun();
    await sell(at.page).fill("24");
    await saved(at.page);
    const other = await open_in(at.page.context(), at.serving.address);
    await settled(other);
    await sell(other).fill("31");
    await saved(other);
    // Nothing that is not in the file stands in the first: it takes what the file holds, and says so.
    await at.page.waitForFunction(() => document.querySelector("#f-run-sell").value === "31");
    await at.page.getByRole("region", { name: "spring_cups.run.json was changed" }).waitFor();
    assert.equal(await underneath(at.page).count(), 0);
    await check_access(at.page, "a changed file taken unasked");
    await press(at.page, "Undo");
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").sell, 24, "undo brings back what gave way");
    await other.waitForFunction(() => document.querySelector("#f-run-sell").value === "24");

    // Typed over what is no longer there: it is asked, and both answers stay until one is taken.
    await deafen(other, "spring_cups.run.json");
    await sell(at.page).fill("35");
    await saved(at.page);
    await sell(other).fill("36");
    await underneath(other).waitFor();
    await sell(other).fill("37");
    await other.reload();
    await underneath(other).waitFor();
    assert.equal(await sell(other).inputValue(), "37");
    assert.equal(at.serving.file("spring_cups.run.json").sell, 35);
    for (const way of ["Load the saved file", "Overwrite it with this page"])
      await other.getByRole("button", { name: way }).waitFor();
    await press(other, "Load the saved file");
    await settled(other);
    assert.equal(await sell(other).inputValue(), "35");
    await ended(at);
  },

  "two tabs on one formula: what is typed is neither dropped nor written over the other's unasked": async () => {
    const at = await begun_with_own();
    const [one, other] = [at.page, await open_in(at.page.context(), at.serving.address)];
    for (const page of [one, other]) {
      await settled(page);
      await press(page, "Change the formula of the base");
    }
    const in_file = () => at.serving.file("meadow_base.formula.json").superfat;

    // Seen in time: the other has typed nothing, and takes it.
    await superfat(one).fill("8 %");
    await other.waitForFunction(() => document.querySelector("#f-pour-superfat").value === "8 %");
    await settled(other);
    assert.equal(await other.locator(".strip dl").innerText(), await one.locator(".strip dl").innerText());

    // Not seen in time: both have typed.
    await deafen(other, "meadow_base.formula.json");
    await superfat(one).fill("9 %");
    await saved(one);
    await superfat(other).fill("7 %");
    await underneath(other).waitFor();
    assert.equal(in_file(), "9 %", "nothing is written unasked");
    assert.equal(await superfat(other).inputValue(), "7 %", "what was typed stays typed");
    assert.match(await other.locator(".saving").innerText(), /^Not saved/);
    assert.ok(await other.locator(".strip .old").count(), "its figures are of neither text");
    await other.locator(".foremost .stale").waitFor();
    await check_access(other, "a formula was changed outside this page");
    await other.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
    await press(other, "To the question");
    assert.match(await other.evaluate(() => document.activeElement.textContent), /was changed outside this page/);
    await superfat(other).fill("6.5 %"); // typed on, before it is decided
    assert.equal(in_file(), "9 %");
    await press(other, "Overwrite it with this page");
    await settled(other);
    await saved(other);
    assert.equal(in_file(), "6.5 %");
    await one.waitForFunction(() => document.querySelector("#f-pour-superfat").value === "6.5 %");
    await settled(one);

    await superfat(one).fill("4 %");
    await saved(one);
    await superfat(other).fill("5 %");
    await press(other, "Load the saved file");
    await settled(other);
    assert.equal(await superfat(other).inputValue(), "4 %");
    assert.equal(in_file(), "4 %");
    await press(other, "Undo");
    assert.equal(await superfat(other).inputValue(), "5 %", "undo brings back what was typed");
    await saved(other);
    assert.equal(in_file(), "5 %");
    check_quiet(one);
    check_quiet(other);
    await ended(at);
  },

  "a page left before it was asked which formula is to stay asks when it comes back": async () => {
    const at = await begun_with_own();
    await deafen(at.page, "meadow_base.formula.json");
    write(at.serving, "meadow_base.formula.json", { ...at.files["meadow_base.formula.json"], superfat: "9 %" });
    await superfat(at.page).fill("7 %");
    await underneath(at.page).waitFor();
    await at.page.unrouteAll({ behavior: "ignoreErrors" });
    await at.page.reload();
    await underneath(at.page).waitFor();
    assert.equal(at.serving.file("meadow_base.formula.json").superfat, "9 %");
    await press(at.page, "Overwrite it with this page");
    await settled(at.page);
    assert.equal(at.serving.file("meadow_base.formula.json").superfat, "7 %");
    check_quiet(at.page);
    await ended(at);
  },

  "a change on disk of formula, mould, fats or tips strikes the figures out until new ones are there": async () => {
    const at = await begun_with_own();
    const { page, serving, files } = at;
    const changes = {
      "meadow_base.formula.json": (json) => (json.superfat = "9 %"),
      "cup.json": (json) => (json.shape.height = "40 mm"),
      "studio.fats.json": (json) =>
        (json.fats.find((one) => one.id === "argan_studio").saponification_value = { low: 194, high: 199 }),
      "studio.tips.json": (json) => (json.tips[0].hand.correction = 1.3),
    };
    await to(page, "Weigh");
    for (const [name, change] of Object.entries(changes)) {
      let let_go;
      const held = new Promise((go) => (let_go = go));
      await page.route("**/api/plan", async (route) => {
        await held;
        await route.continue();
      });
      const before = await page.locator(".weighing").allInnerTexts();
      change(files[name]);
      write(serving, name, files[name]);
      await page.locator(".foremost .stale", { hasText: name }).waitFor();
      const weights = page.locator(".weigh .amount");
      const struck = await weights.evaluateAll((all) =>
        all.map((one) => getComputedStyle(one.querySelector("b")).textDecorationLine),
      );
      assert.ok(
        struck.length > 20 && struck.every((one) => one === "line-through"),
        `${name}: a weight of before stands as of now`,
      );
      await check_access(page, `${name} changed`);
      let_go();
      await settled(page);
      await page.unroute("**/api/plan");
      assert.equal(await page.locator(".foremost .stale").count(), 0, name);
      // What lies open says so itself, and no line of it stands above all else.
      assert.equal(await taken_in(page).filter({ hasText: name }).count(), name.includes("formula") ? 0 : 1, name);
      assert.notDeepEqual(await page.locator(".weighing").allInnerTexts(), before, name);
      const { pour, pipe } = first_batch(serving.printed("plan", "spring_cups.run.json"));
      const weighed = pour.ingredients.find((one) => one.name.startsWith("NaOH")).g;
      assert.equal(Number.parseFloat(await naoh(page)), weighed, name);
      await to(page, "Set up");
      const topping = await page
        .locator(".lane.pipe .figure", { hasText: "Topping to make" })
        .locator(".value b")
        .innerText();
      assert.ok(Math.abs(Number.parseFloat(topping) - pipe.make_g) <= 0.05 + 1e-9, name);
      await to(page, "Weigh");
    }
    check_quiet(page);
    await ended(at);
  },

  "a formula taken away on disk is told of, and what is on the page can be kept": async () => {
    const at = await begun_with_own();
    renameSync(join(at.serving.folder, "meadow_base.formula.json"), join(at.serving.folder, "gone.txt"));
    await at.page.getByRole("heading", { name: "meadow_base.formula.json was deleted" }).waitFor();
    assert.ok(await at.page.locator(".value.old").count());
    assert.equal(await at.page.getByRole("button", { name: "Overwrite it with this page" }).count(), 0);
    await press(at.page, "Save it again");
    await settled(at.page);
    assert.equal(at.serving.file("meadow_base.formula.json").superfat, "6 %");
    check_quiet(at.page);
    await ended(at);
  },

  "a run deleted by another hand can be left deleted: the list is shown, and what was typed is forgotten": async () => {
    const at = await begun_with_own();
    const run = "spring_cups.run.json";
    await deafen(at.page, run);
    unlinkSync(join(at.serving.folder, run));
    await sell(at.page).fill("29");
    await at.page.getByRole("heading", { name: `${run} was deleted` }).waitFor();
    assert.match(await at.page.locator(".saving").innerText(), /was deleted outside this page/);
    await check_access(at.page, "a run was deleted outside this page");
    await press(at.page, "Leave it deleted");
    await at.page.getByRole("heading", { name: "Runs", level: 1 }).waitFor();
    await at.page.locator(".file-name", { hasText: run }).waitFor({ state: "detached" });
    assert.deepEqual(await unsaved_names(at.page), []);
    await at.page.reload();
    await at.page.locator(".rail").waitFor();
    await settled(at.page);
    assert.ok(!existsSync(join(at.serving.folder, run)));
    check_quiet(at.page);
    await ended(at);
  },

  "a formula deleted by another hand can be left deleted: the run then asks for another": async () => {
    const at = await begun_with_own();
    const base = "meadow_base.formula.json";
    await press(at.page, "Change the formula of the base");
    await deafen(at.page, base);
    unlinkSync(join(at.serving.folder, base));
    await superfat(at.page).fill("8 %");
    await press(at.page, "Leave it deleted");
    await at.page.locator(".set-up").waitFor();
    await at.page.locator(".complaints .alarm", { hasText: base }).waitFor();
    assert.ok(!existsSync(join(at.serving.folder, base)));
    assert.deepEqual(await unsaved_names(at.page), []);
    await at.page.getByLabel("Base", { exact: true }).selectOption("cloud_topping.formula.json");
    await settled(at.page);
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").pour.formula, "cloud_topping.formula.json");
    check_quiet(at.page);
    await ended(at);
  },

  "a mould deleted while it is changed can be left deleted": async () => {
    const at = await begun_with_own();
    await to(at.page, "Moulds");
    await at.page.locator(".file", { hasText: "cup.json" }).locator(".open").click();
    await press(at.page, "Change it");
    await at.page.getByLabel("What you call it", { exact: true }).fill("Cup of old");
    unlinkSync(join(at.serving.folder, "cup.json"));
    await press(at.page, "Leave it deleted");
    await at.page.locator(".file-name", { hasText: /^cup\.json$/ }).waitFor({ state: "detached" });
    assert.ok(!existsSync(join(at.serving.folder, "cup.json")));
    assert.equal(await at.page.getByText("is still here").count(), 0, "nothing of it is kept");
    check_quiet(at.page);
    await ended(at);
  },

  "one request waits for all files, one at a time, whatever lies open": async () => {
    const at = await begun_with_own();
    const { page, serving, files } = at;
    const waiting = new Set();
    let [most, asked] = [0, 0];
    page.on("request", (request) => {
      if (!/\/api\/changed\?wait=[1-9]/.test(request.url())) return;
      waiting.add(request);
      most = Math.max(most, waiting.size);
      ++asked;
    });
    for (const end of ["requestfinished", "requestfailed"]) page.on(end, (request) => waiting.delete(request));
    await press(page, "Change the formula of the base");
    await superfat(page).fill("7 %");
    await saved(page);
    await page.waitForTimeout(1500); // whatever that makes it ask has been asked
    asked = 0;
    await page.waitForTimeout(3000);
    assert.ok(asked <= 1, `${asked} requests in 3 s, in which nothing happened`);
    assert.equal(waiting.size, 1);
    const names = new URL([...waiting][0].url()).searchParams;
    for (const name of Object.keys(files)) assert.ok(names.has(`file:${name}`), `${name} is not watched`);
    for (const [name, change] of Object.entries({
      "cup.json": (json) => (json.shape.height = "40 mm"),
      "studio.tips.json": (json) => (json.tips[0].hand.correction = 1.3),
      "studio.json": (json) => (json.schema = "brimwright.studio/1"), // was not there
    })) {
      const json = structuredClone(files[name] ?? {});
      change(json);
      write(serving, name, json);
      await taken_in(page)
        .filter({ hasText: `${name} was changed outside this page: the figures are of it` })
        .waitFor();
      await settled(page);
      assert.match(await page.locator(".unseen[role=status]").innerText(), new RegExp(`^${name} was changed`));
      await taken_in(page).getByRole("button", { name: "Close" }).click();
      assert.equal(await taken_in(page).count(), 0);
    }
    write(serving, "spring_cups.run.json", { ...files["spring_cups.run.json"], sell: 20 });
    await page.getByRole("region", { name: "spring_cups.run.json was changed" }).waitFor();
    assert.equal(most, 1, "two waited at the same time");
    check_quiet(page);
    await ended(at);
  },

  "what another hand changed is told of long enough to be read, and is gone with what is typed after that":
    async () => {
      const at = await begun_with_own();
      const { page, serving, files } = at;
      files["cup.json"].shape.height = "40 mm";
      files["studio.tips.json"].tips[0].hand.correction = 1.3;
      const typed_at_once = page.evaluate(
        () =>
          new Promise((done) => {
            const watch = new MutationObserver(() => {
              if (!document.querySelector(".taken-in")) return;
              watch.disconnect();
              const input = document.querySelector("#f-run-sell");
              input.value = "31";
              input.dispatchEvent(new InputEvent("input", { bubbles: true }));
              setTimeout(() => done(document.querySelector(".taken-in") !== null), 500);
            });
            watch.observe(document.body, { subtree: true, childList: true });
          }),
      );
      for (const name of ["cup.json", "studio.tips.json"]) write(serving, name, files[name]);
      assert.ok(await typed_at_once, "nobody reads that soon");
      await taken_in(page).filter({ hasText: "cup.json" }).filter({ hasText: "studio.tips.json" }).waitFor();
      await settled(page);
      await check_access(page, "two files were changed by another hand");
      await page.waitForTimeout(5100);
      await sell(page).fill("32");
      await settled(page);
      assert.equal(await taken_in(page).count(), 0);
      check_quiet(page);
      await ended(at);
    },

  "what this page writes itself is not laid to another hand": async () => {
    const at = await begun_with_own();
    const { page, serving } = at;
    await to(page, "Moulds");
    await page.locator(".file", { hasText: "cup.json" }).locator(".open").click();
    await press(page, "Change it");
    await page.getByLabel("What you call it", { exact: true }).fill("My cup");
    await page.getByLabel("Floor to brim (mm)", { exact: true }).fill("40");
    await press(page, "Save the change");
    await page.getByText("Saved in cup.json.").waitFor();
    assert.equal(serving.file("cup.json").shape.height, "40 mm");
    await to(page, "Weigh");
    await page.waitForTimeout(1500); // the change was heard of, and followed
    await settled(page);
    assert.equal(await page.locator(".foremost").count(), 0);
    check_quiet(page);
    await ended(at);
  },

  "a page that wakes asks anew, though the answer that it waited for never comes": async () => {
    const at = await begun_with_own();
    const { page, serving, files } = at;
    let is_asleep = true;
    await page.route("**/api/changed?wait=20*", (route) => (is_asleep ? undefined : route.continue()));
    const wake = () => page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
    await wake(); // what was asked before is given up, and now nothing is answered
    await page.waitForTimeout(1500);
    write(serving, "spring_cups.run.json", { ...files["spring_cups.run.json"], sell: 20 });
    await page.waitForTimeout(1500);
    assert.equal(await page.locator(".banner").count(), 0);
    is_asleep = false;
    await wake();
    await page.getByRole("region", { name: "spring_cups.run.json was changed" }).waitFor();
    check_quiet(page);
    await ended(at);
  },

  "a folder with more in it than is looked at is said to be so, above the lists": async () => {
    const serving = new Serving();
    for (let i = 0; i < 2100; ++i) writeFileSync(join(serving.folder, `note_${i}.txt`), "");
    await serving.start();
    const page = await open(chromium, serving.address);
    await settled(page);
    await to(page, "Runs");
    await page.locator("main .alarm", { hasText: "2000" }).waitFor();
    await check_access(page, "a folder with too much in it");
    check_quiet(page);
    await ended({ serving, page });
  },

  "the address of a new start, pasted into the old tab, goes on where it was": async () => {
    const at = await begun();
    await sell(at.page).fill("21");
    await saved(at.page);
    const old = at.serving.address;
    await at.serving.stop();
    await sell(at.page).fill("22");
    await at.serving.start();
    assert.notEqual(at.serving.address, old);
    await at.page.goto(at.serving.address); // nothing but what stands behind its # is new
    await settled(at.page);
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").sell, 22);

    const late = await open(chromium, old);
    await late.getByText("This address is from an earlier start").waitFor();
    await late.goto(at.serving.address);
    await settled(late);
    assert.equal(await sell(late).inputValue(), "22");
    await late.context().close();
    await ended(at);
  },

  "a writing whose answer is lost is gone on with, and no other hand is blamed for it": async () => {
    const at = await begun_with_own();
    const lose_answer = async () => {
      let is_done = false;
      let tell;
      const is_lost = new Promise((lost) => (tell = lost));
      await at.page.route("**/api/file", async (route) => {
        if (is_done || route.request().method() !== "PUT") return route.fallback();
        is_done = true;
        await route.fetch();
        await route.abort();
        tell();
      });
      return { is_lost };
    };
    let lost = await lose_answer();
    await sell(at.page).fill("41");
    await lost.is_lost;
    await sell(at.page).fill("42");
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").sell, 42);

    await press(at.page, "Change the formula of the base");
    lost = await lose_answer();
    await superfat(at.page).fill("7 %");
    await lost.is_lost;
    await superfat(at.page).fill("8 %");
    await settled(at.page);
    await saved(at.page);
    assert.equal(at.serving.file("meadow_base.formula.json").superfat, "8 %");
    assert.equal(await underneath(at.page).count(), 0);
    await ended(at);
  },

  "a program whose planning part was ended goes on with the next keystroke": async () => {
    const at = await begun_with_own();
    const { pid } = at.serving.process;
    const of_thread = (thread) =>
      readFileSync(`/proc/${pid}/task/${thread}/children`, "utf8").trim().split(/\s+/).filter(Boolean);
    const workers = readdirSync(`/proc/${pid}/task`).flatMap(of_thread).map(Number);
    assert.ok(workers.length > 0, "answers come from a process of their own");
    for (const worker of workers) process.kill(worker, "SIGKILL");
    await sell(at.page).fill("37");
    await settled(at.page);
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").sell, 37);
    assert.equal(await at.page.locator(".complaints .alarm").count(), 0);
    await ended(at);
  },

  "a question that brings the program down is said to have done so, and the next is answered": async () => {
    const at = await begun();
    const once = async (path, status, method) => {
      let is_done = false;
      await at.page.route(path, async (route) => {
        if (is_done || (method && route.request().method() !== method)) return route.fallback();
        is_done = true;
        await route.fulfill({
          status,
          contentType: "application/json",
          body: JSON.stringify({
            complaint: {
              file: "",
              field: "",
              problem: `internal error ${status}`,
              remedy: "",
              line: `internal error ${status}`,
            },
          }),
        });
      });
    };
    await sell(at.page).fill("30"); // the example becomes her own
    await saved(at.page);
    await settled(at.page);
    await at.page.waitForTimeout(1500); // its new file was heard of, and nothing more is asked
    await once("**/api/plan", 500);
    await sell(at.page).fill("31");
    await at.page.locator(".complaints", { hasText: "internal error 500" }).waitFor();
    assert.equal(await sell(at.page).inputValue(), "31");
    assert.ok(await at.page.locator(".value.old").count());
    await check_access(at.page, "an internal error");
    await press(at.page, "Ask again");
    await settled(at.page);
    assert.equal(await at.page.locator(".complaints .alarm").count(), 0);

    await once("**/api/plan", 503);
    await sell(at.page).fill("32");
    await settled(at.page); // asked again by itself

    await once("**/api/file", 500, "PUT");
    await sell(at.page).fill("33");
    await at.page.getByText("Not saved: internal error 500").waitFor();
    await sell(at.page).fill("34");
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").sell, 34);
    await once("**/api/file", 503, "PUT");
    await sell(at.page).fill("35");
    await at.page.getByText("Not saved: internal error 503").waitFor();
    await saved(at.page);
    assert.equal(at.serving.file("spring_cups.run.json").sell, 35);
    await ended(at);
  },
});
await chromium.close();
