#pragma once

namespace brimwright::cli {

// What each command's help says beside its options. Examples that name files of the program's own
// are run by tests/cli/readme_test.py. No line is longer than 80 columns.

inline constexpr auto about =
    "From a mould to weighed soap ingredients: measures a mould, turns its volume\n"
    "into base, topping and decoration for a run of pieces, and works out every\n"
    "weight, both lye solutions and the material cost of a piece.\n";

inline constexpr auto examples =
    "Examples\n"
    "  brimwright list moulds\n"
    "  brimwright gauge moulds/low_bowl.json\n"
    "  brimwright gauge cup.stl --unit mm --role cavity --depth \"30 mm\"\n"
    "  brimwright plan examples/spring_cups.run.json\n"
    "  brimwright plan examples/spring_cups.run.json --sell 40 --json\n"
    "  brimwright sheet examples/spring_cups.run.json --pdf spring.pdf\n"
    "\n"
    "Each command has its own --help. Quantities carry their unit: \"5 mm\", \"2 1/4\n"
    "in\", \"2 oz\" (mass), \"2 fl oz\" (US volume), \"49 °C\". \"-\" reads the file from\n"
    "standard input, and writes to standard output.\n"
    "Exit status: 0 done, 1 something in your input needs correcting, 2 internal\n"
    "error.\n";

inline constexpr auto gauge_examples =
    "FILE is a mould file (.json) or a mesh (.stl .obj .ply .off .3mf .gltf .glb):\n"
    "the cavity itself or a finished piece (cavity), a mould with its cavities\n"
    "(body), or a mould's inner surface, open above (skin); asked for where its shape\n"
    "does not tell. Broken meshes are repaired where that is sound, and each repair\n"
    "is reported. Of a mould file all ways of measuring stand side by side, each with\n"
    "how sure it is, and with what the batches say that are recorded beside it.\n"
    "\n"
    "Examples\n"
    "  brimwright gauge moulds/fluted_cup_small.json\n"
    "  brimwright gauge tray.stl --unit mm\n"
    "  brimwright gauge hollow.stl --unit in --up +y --depth \"1 1/2 in\"\n"
    "  brimwright gauge moulds/round_cup.json --fit-mass \"95 g\" --density \"1.01 g/ml\"\n"
    "  brimwright gauge moulds/pebble.json --cast-wall \"10 mm\" --cast-base \"12 mm\"\n"
    "  brimwright gauge moulds/twisted_cup.json --pour \"61.5 ml\"\n"
    "  brimwright gauge moulds/plain_bar.json --tilt \"12 deg\" --mark \"18 mm\"\n"
    "  brimwright gauge moulds/twisted_cup.json --picture cup.svg --below-brim \"6 mm\"\n"
    "  brimwright gauge my_bar.json --batches-of may.run.json\n"
    "  brimwright gauge moulds/loaf_short.json --embed moulds/marble_tray.json \\\n"
    "      --cover \"6 mm\"\n";

inline constexpr auto plan_examples =
    "RUN is a run file (.json) that names its mould and formulas. Shown are the\n"
    "pieces to make, every ingredient of base and topping, both lye solutions\n"
    "with the superfat as weighed, decoration, dust, and the material cost of a\n"
    "piece.\n"
    "\n"
    "Examples\n"
    "  brimwright plan examples/spring_cups.run.json\n"
    "  brimwright plan examples/spring_cups.run.json --sell 60\n"
    "  brimwright plan examples/spring_cups.run.json --picture pour.svg\n"
    "  brimwright plan examples/spring_cups.run.json --piece piece.svg --piece it.glb\n"
    "  brimwright plan examples/spring_cups.run.json --label label.txt\n"
    "  brimwright plan examples/spring_cups.run.json --brief\n"
    "  brimwright plan examples/plain_bars.run.json --weighed \"base NaOH 140 g\" \\\n"
    "      --purity \"NaOH 97 %\"\n"
    "  brimwright plan may.json --library ~/soap/moulds --json > may_plan.json\n";

inline constexpr auto quote_examples =
    "What making the run costs, part by part, for one saleable piece: materials as\n"
    "weighed, packaging, work and overhead, as the studio's file tells them. Nothing\n"
    "that lacks a price counts as free: it is named, and there is no price to ask.\n"
    "Margin is profit by the price, markup is profit by the cost. What is to lay out\n"
    "now, in whole packs, stands apart from what is used. An order's lines are quoted\n"
    "together; its fees and postage count once. An order that says \"ready\": \"take\"\n"
    "takes pieces that are made already: the rest, what that costs and what the ready\n"
    "ones did cost are told apart. So do buy, days and sheet plan the rest.\n"
    "\n"
    "Examples\n"
    "  brimwright quote examples/spring_cups.run.json\n"
    "  brimwright quote examples/spring_cups.run.json --sell 12,24,48,96 \\\n"
    "      --margin \"60 %\"\n"
    "  brimwright quote examples/spring_cups.run.json --price 6.50 --json\n"
    "  brimwright quote market.order.json --times 1,2 --way retail --offer offer.pdf\n";

inline constexpr auto sheet_examples =
    "The run for the bench, in the order you work: the day before, pour, pipe,\n"
    "decorate, and blanks for what really happened. Weights can be read from two\n"
    "metres; the pour line is drawn at true size, with a bar of 50 mm to check it.\n"
    "With neither --html nor --pdf the HTML goes to standard output. Print at 100 %,\n"
    "not \"fit to page\".\n"
    "\n"
    "Examples\n"
    "  brimwright sheet examples/spring_cups.run.json --pdf spring.pdf\n"
    "  brimwright sheet examples/spring_cups.run.json --pdf spring.pdf --paper Letter\n"
    "  brimwright sheet examples/spring_cups.run.json --pdf second.pdf --batch 2\n"
    "  brimwright sheet examples/spring_cups.run.json --sell 60 > spring.html\n";

inline constexpr auto buy_examples =
    "Packs, sellers with their postage, packaging, what stands on the shelf and what\n"
    "is wasted are in the studio's file. All runs are of one studio. What has no pack\n"
    "is named as unpriced and is not in the sum.\n"
    "\n"
    "Examples\n"
    "  brimwright buy may.run.json june.run.json\n"
    "  brimwright buy may.run.json --with-stock\n"
    "  brimwright buy may.run.json market.order.json --pdf list.pdf\n"
    "  brimwright buy may.run.json market.order.json --csv list.csv\n";

inline constexpr auto days_examples =
    "When you make, days off, pots, bowls and places to cure are in the studio's file\n"
    "under \"days\", what work takes under \"work\". With a due day the answer is the\n"
    "latest start; without one it is the day to promise. What cannot be kept is said,\n"
    "with how much can, and what would help, each planned. Pieces are packed before\n"
    "the due day, and cure from the day they are poured. Dates are year-month-day.\n"
    "\n"
    "Examples\n"
    "  brimwright days market.order.json --due 2026-12-20\n"
    "  brimwright days may.run.json june.run.json --from 2026-05-01\n"
    "  brimwright days market.order.json --ics days.ics --alarm 18:00 --svg days.svg\n"
    "  brimwright days market.order.json --ics new.ics --since days.ics\n";

inline constexpr auto note_examples =
    "Records are kept in records.sqlite in the run's own folder. --begin, when the lye\n"
    "is mixed, freezes the batch: its plan, the files it was made from, and a code for\n"
    "sheet and label that no other batch gets. Then each blank of the bench sheet may\n"
    "be noted by its key; RUN --batch N lists them all. Several values are noted\n"
    "together or not at all, and what is answered as noted is on the disk. A value\n"
    "that can hardly be so is asked about once. A batch is ready for sale only after\n"
    "its test is noted as passed.\n"
    "\n"
    "Lines of an order that are poured together begin with the order: their base as a\n"
    "batch of its own, and of each line a batch that is poured from it.\n"
    "\n"
    "Examples\n"
    "  brimwright note may.run.json --batch 1 --begin\n"
    "  brimwright note market.order.json --begin\n"
    "  brimwright note may.run.json --batch 1\n"
    "  brimwright note may.run.json --batch 1 --set base.made=\"1766 g\" \\\n"
    "      --set topping.cup=\"61 g\" --set pieces.rejected=1\n"
    "  brimwright note may.run.json --batch 1 \\\n"
    "      --set weighed.pour.fats.olive=\"1010 g\"\n"
    "  brimwright note may.run.json --batch-code 2026-12-01A \\\n"
    "      --set cured.2026-12-29=\"12 pieces, 1040 g\"\n"
    "  brimwright note may.run.json --batch 1 --set tested_how=\"phenolphthalein: clear\" \\\n"
    "      --set tested=pass --set ready_on=2027-01-05\n";

inline constexpr auto records_examples =
    "Without options: how many batches and lots, since when, whether the file is\n"
    "sound, and what lies beside it that looks like another copy of it.\n"
    "\n"
    "Examples\n"
    "  brimwright records soap\n"
    "  brimwright records soap --backup soap-2026-12-31.sqlite\n"
    "  brimwright records soap --export soap.json\n"
    "  brimwright records new_folder --import soap.json\n";

inline constexpr auto stock_examples =
    "Lots and pieces stand in the file records.sqlite of the folder. A batch that\n"
    "begins (note) takes what it weighs from lots: what is best before an earlier day\n"
    "first, then the older lot, never one past its day unless you choose it. Pieces\n"
    "are those noted as made, less rejects and what is recorded here; nothing is sold\n"
    "that was not tested. Once there are records, buy, quote and days count lots and\n"
    "no longer the studio's \"have\".\n"
    "\n"
    "Examples\n"
    "  brimwright stock soap\n"
    "  brimwright stock soap --bought \"olive oil\" --pack \"5 kg\" --packs 2 \\\n"
    "      --price \"27.50 EUR\" --seller \"Oil mill\" --lot OL-12 \\\n"
    "      --best-before 2028-05-31\n"
    "  brimwright stock soap --counted \"OL-12=3.2 kg\" --why \"a leaking tap\"\n"
    "  brimwright stock soap --sold 2026-12-01A=12 --order soap/market.order.json\n"
    "  brimwright stock soap --take-have\n";

inline constexpr auto trail_examples =
    "Followed both ways: from a lot to the batches it is in, their pieces and who got\n"
    "them; from a batch or an order back to the lots. Of a batch it says what its\n"
    "materials did cost by their lots. What was weighed of an unknown lot is named.\n"
    "\n"
    "Examples\n"
    "  brimwright trail soap CO-117\n"
    "  brimwright trail soap 2026-12-01A\n"
    "  brimwright trail soap soap/market.order.json --json\n";

inline constexpr auto serve_examples =
    "The page is opened in your browser and answered on this computer only. It works\n"
    "in the folder of RUN, or in the current one; saving there keeps the same files\n"
    "that the other commands read. Built-in examples are saved as copies.\n"
    "\n"
    "Examples\n"
    "  brimwright serve\n"
    "  brimwright serve soap/may.run.json\n"
    "  brimwright serve --port 8080 --no-browser\n";

inline constexpr auto list_examples =
    "With a name, everything known of that one and where it is from.\n"
    "\n"
    "Examples\n"
    "  brimwright list moulds\n"
    "  brimwright list fats\n"
    "  brimwright list fats coconut\n"
    "  brimwright list tips\n";

inline constexpr auto learn_examples =
    "Shown is each figure that three batches or more tell, between which values it\n"
    "lies, and what the plan uses; then what the notes cannot tell, and what to note\n"
    "next time. Volume, density, losses, topping, cure and work are told apart, never\n"
    "mixed into one factor. Nothing changes until you take a figure: it is written\n"
    "into the run, studio.json, the mould or the formula, with the number of batches\n"
    "and the day, and the plan says that it uses it. --undo goes back step by step,\n"
    "down to what you typed.\n"
    "\n"
    "Examples\n"
    "  brimwright learn may.run.json\n"
    "  brimwright learn may.run.json --take pot\n"
    "  brimwright learn may.run.json --undo pot\n"
    "  brimwright learn studio.json --picture days.svg\n"
    "  brimwright learn studio.json --year 2026 --picture 2026.svg\n";

inline constexpr auto tidy_examples =
    "FILE is a run, a formula, a mould or a file of tips. Keys that have another name\n"
    "today are renamed, and everything else stays as you wrote it. A file with a\n"
    "mistake in it is not touched, and then no other is either.\n"
    "\n"
    "Examples\n"
    "  brimwright tidy may.run.json\n"
    "  brimwright tidy *.json moulds/*.json\n";

inline constexpr auto init_examples =
    "The folder gets a studio.json for what is the same in every run, a mould, a\n"
    "formula and a run. Nothing in them is guessed: each blank says what goes there\n"
    "and how to measure it.\n"
    "\n"
    "Examples\n"
    "  brimwright init soap\n"
    "  brimwright plan soap/first.run.json\n";

inline constexpr auto completions_examples =
    "The build installs all four where shells and man look for them.\n"
    "\n"
    "Examples\n"
    "  brimwright completions bash > brimwright.bash\n";

}  // namespace brimwright::cli
