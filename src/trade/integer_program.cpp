#include "trade/integer_program.h"

#include <glpk.h>

#include <csetjmp>
#include <cstdio>
#include <cstring>
#include <limits>
#include <stdexcept>

namespace brimwright::trade {
namespace {

constexpr int most_milliseconds = 20'000;  // should the simplex method go round in a circle

/// A program in the solver's own arrays, which begin at 1, and what comes back. The solver is C and
/// leaves by a jump where it fails: between here and there nothing may stand that has a destructor.
struct Job {
  const IntegerProgram* program;
  int terms;
  const int* rows;
  const int* columns;
  const double* factors;
  int most_nodes;

  int nodes = 0;
  bool is_solved = false;
  double bound = -std::numeric_limits<double>::infinity();
  double* values;
  char said[200] = {};
  std::jmp_buf back = {};
};

/// The solver's manual, glp_error_hook: a hook that returns ends the program; one that jumps must
/// see to it that glp_free_env is called.
void leap_back(void* job) { std::longjmp(static_cast<Job*>(job)->back, 1); }

int keep_what_is_said(void* job, const char* text) {
  Job& kept = *static_cast<Job*>(job);
  const std::size_t length = std::strlen(kept.said);
  if (glp_at_error()) std::snprintf(kept.said + length, sizeof kept.said - length, "%s", text);
  return 1;  // not printed
}

void bound_the_work(glp_tree* tree, void* info) {
  if (glp_ios_reason(tree) != GLP_ISELECT) return;
  Job& job = *static_cast<Job*>(info);
  if (const int best = glp_ios_best_node(tree)) job.bound = glp_ios_node_bound(tree, best);
  if (++job.nodes > job.most_nodes) glp_ios_terminate(tree);
}

void set_row(glp_prob* problem, int number, const IntegerProgram::Row& row) {
  const bool has_least = row.least > -IntegerProgram::no_limit;
  const bool has_most = row.most < IntegerProgram::no_limit;
  const int kind = !has_least              ? GLP_UP
                   : !has_most             ? GLP_LO
                   : row.least == row.most ? GLP_FX
                                           : GLP_DB;
  glp_set_row_bnds(problem, number, kind, has_least ? row.least : 0, has_most ? row.most : 0);
}

glp_prob* problem_of(const Job& job) {
  glp_prob* problem = glp_create_prob();
  const IntegerProgram& program = *job.program;
  glp_set_obj_dir(problem, GLP_MIN);
  glp_add_rows(problem, static_cast<int>(program.rows.size()));
  glp_add_cols(problem, static_cast<int>(program.costs.size()));
  for (std::size_t i = 0; i < program.rows.size(); ++i)
    set_row(problem, static_cast<int>(i) + 1, program.rows[i]);
  for (std::size_t i = 0; i < program.costs.size(); ++i) {
    glp_set_col_kind(problem, static_cast<int>(i) + 1, GLP_BV);
    glp_set_obj_coef(problem, static_cast<int>(i) + 1, program.costs[i]);
  }
  glp_load_matrix(problem, job.terms, job.rows, job.columns, job.factors);
  return problem;
}

void solve(Job& job) {
  glp_error_hook(leap_back, &job);
  glp_term_hook(keep_what_is_said, &job);
  glp_prob* problem = problem_of(job);
  glp_iocp how;
  glp_init_iocp(&how);
  how.msg_lev = GLP_MSG_OFF;
  how.presolve = GLP_ON;
  how.mir_cuts = GLP_ON;
  how.tm_lim = most_milliseconds;
  how.tol_obj = 1e-9;
  how.cb_func = bound_the_work;
  how.cb_info = &job;
  const int fault = glp_intopt(problem, &how);
  const int status = glp_mip_status(problem);
  job.is_solved = status == GLP_OPT || status == GLP_FEAS;
  if (job.is_solved)
    for (int i = 1; i <= glp_get_num_cols(problem); ++i)
      job.values[i - 1] = glp_mip_col_val(problem, i);
  if (fault == 0 && status == GLP_OPT) job.bound = glp_mip_obj_val(problem);
  glp_delete_prob(problem);
}

/// Whether the solver came back by itself. Its memory and hooks are its thread's own (it is built
/// so), and gone afterwards either way.
bool came_back(Job& job) {
  if (setjmp(job.back) != 0) {
    glp_free_env();
    return false;
  }
  solve(job);
  glp_free_env();
  return true;
}

}  // namespace

Solved solved(const IntegerProgram& program, int most_nodes) {
  std::vector<int> rows(1), columns(1);
  std::vector<double> factors(1);
  for (std::size_t i = 0; i < program.rows.size(); ++i)
    for (const auto& term : program.rows[i].terms) {
      rows.push_back(static_cast<int>(i) + 1);
      columns.push_back(static_cast<int>(term.column) + 1);
      factors.push_back(term.factor);
    }
  std::vector<double> values(program.costs.size());
  Job job{.program = &program,
          .terms = static_cast<int>(rows.size()) - 1,
          .rows = rows.data(),
          .columns = columns.data(),
          .factors = factors.data(),
          .most_nodes = most_nodes,
          .values = values.data()};
  if (!came_back(job)) throw std::runtime_error(std::string("the solver failed: ") + job.said);
  Solved found{.is_taken = {}, .bound = job.bound};
  if (job.is_solved)
    for (const double value : values) found.is_taken.push_back(value > 0.5);
  return found;
}

}  // namespace brimwright::trade
