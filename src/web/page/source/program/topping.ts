// A topping, of whichever of the answer's weighings: the run's, a batch's or one whipping's.
import type { Batter, Piped } from "./answers";

export type Topping = Batter & Piped;
