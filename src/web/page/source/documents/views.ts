// What the page can show: lists of what there is, the views of the run that lies open, and a formula.
export const list_views = ["runs", "orders", "formulas", "moulds", "fats", "tips", "shelf"] as const;
export type ListView = (typeof list_views)[number];

/** In the order of the rail; a run opens on the first. */
export const run_views = ["weigh", "record", "set-up", "watch", "money", "days", "mould", "print"] as const;
export type RailView = (typeof run_views)[number];
/** And what is reached from one of them. */
export type RunView = RailView | "learned";

export type View = "reading" | "order" | "formula" | "trail" | ListView | RunView;

export const is_list = (view: View): view is ListView => list_views.some((one) => one === view);
export const is_of_run = (view: View): view is RunView => view === "learned" || run_views.some((one) => one === view);
