#pragma once

#include "chemistry/formula.h"
#include "units/fields.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::chemistry {

/// A lye solution that stands ready, as the studio tells of it.
struct StandingSolution {
  LyeSolution solution;
  Alkali alkali;
  Share strength, low, high;  // pure alkali in the solution
};

/// Reads what stands under the solution's `name`. Its strength is asked with its range, as an open
/// jug grows stronger: UserError for a ratio or a bare number, for more than stays dissolved, for a
/// range that is the wrong way round, too wide to weigh by, or does not hold the strength.
StandingSolution read_lye_solution(const Fields& fields, const std::string& name);

/// Has `formula` weigh `standing` in place of the dry alkali. UserError at `where`, which names it,
/// where the formula takes no such alkali or has another solution of it already.
void take_solution(Formula& formula, const StandingSolution& standing, const Place& where);

/// UserError at `where` if the solutions of `formula` bring more water than its lye has, or leave
/// too little for the alkali that is weighed dry beside them.
void refuse_flooded_lye(const Formula& formula, const Place& where);

/// "NaOH, 99 % pure", "NaOH solution, 50 % strong (Jug A)".
std::string name_of(const FormulaAlkali& alkali);

/// A caution for each solution that may crystallise where it stands.
std::vector<Remark> standing_solution_cautions(const Formula& formula);

}  // namespace brimwright::chemistry
