// The page's way in: the first questions are on their way before its large rest is worked through.
import { is_asked_ahead } from "../documents/ahead";

const longest_ms = 150;

const soon = new Promise((later) => setTimeout(later, longest_ms));

void Promise.race([is_asked_ahead, soon]).then(() => import("./main"));
