#include "oracle/linear.hpp"

#include <coin/Cbc_C_Interface.h>
#include <glpk.h>

#include <algorithm>
#include <string>

namespace stringcourse::oracle {
namespace {

/// The constraint matrix by columns, as both libraries' loaders want it.
struct ByColumns {
  std::vector<int> start, row;
  std::vector<double> factor;
};

ByColumns by_columns(const LinearModel& model) {
  std::vector<std::vector<Term>> columns(model.upper.size());
  for (std::size_t r = 0; r < model.constraints.size(); ++r)
    for (const Term& term : model.constraints[r].terms)
      columns[static_cast<std::size_t>(term.column)].push_back({static_cast<int>(r), term.factor});
  ByColumns made;
  for (std::vector<Term>& column : columns) {
    made.start.push_back(static_cast<int>(made.row.size()));
    std::sort(column.begin(), column.end(), [](const Term& a, const Term& b) { return a.column < b.column; });
    const std::size_t first = made.row.size();
    for (const Term& entry : column) {
      if (made.row.size() > first && made.row.back() == entry.column) made.factor.back() += entry.factor;
      else {
        made.row.push_back(entry.column);
        made.factor.push_back(entry.factor);
      }
    }
  }
  made.start.push_back(static_cast<int>(made.row.size()));
  return made;
}

LinearAnswer by_cbc(const LinearModel& model, double seconds) {
  const ByColumns matrix = by_columns(model);
  std::vector<double> low, high;
  for (const Constraint& constraint : model.constraints) {
    low.push_back(constraint.lower);
    high.push_back(constraint.upper);
  }
  Cbc_Model* cbc = Cbc_newModel();
  Cbc_setLogLevel(cbc, 0);
  const std::vector<double> zeros(model.upper.size(), 0.0);
  Cbc_loadProblem(cbc, static_cast<int>(model.upper.size()), static_cast<int>(low.size()), matrix.start.data(),
                  matrix.row.data(), matrix.factor.data(), zeros.data(), model.upper.data(), model.objective.data(),
                  low.data(), high.data());
  for (std::size_t i = 0; i < model.whole.size(); ++i)
    if (model.whole[i] != 0) Cbc_setInteger(cbc, static_cast<int>(i));
  Cbc_setParameter(cbc, "ratioGap", "0");
  Cbc_setParameter(cbc, "allowableGap", "0");
  Cbc_setParameter(cbc, "increment", "0.9");   // objectives are whole, so a better one is better by at least 1
  Cbc_setParameter(cbc, "preprocess", "off");  // measured on these models: two to five times slower with it
  Cbc_setParameter(cbc, "log", "0");
  Cbc_setMaximumSeconds(cbc, seconds);
  Cbc_solve(cbc);
  LinearAnswer answer;
  if (Cbc_isProvenOptimal(cbc) != 0) {
    const double* values = Cbc_getColSolution(cbc);
    answer = {Outcome::Optimal, {values, values + model.upper.size()}};
  } else if (Cbc_isProvenInfeasible(cbc) != 0) {
    answer.outcome = Outcome::Infeasible;
  }
  Cbc_deleteModel(cbc);
  return answer;
}

void load_glpk(glp_prob* problem, const LinearModel& model) {
  if (!model.constraints.empty()) glp_add_rows(problem, static_cast<int>(model.constraints.size()));
  glp_add_cols(problem, static_cast<int>(model.upper.size()));
  for (std::size_t r = 0; r < model.constraints.size(); ++r) {
    const Constraint& c = model.constraints[r];
    const bool has_low = c.lower > -kNoLimit, has_high = c.upper < kNoLimit;
    const int kind = !has_low ? GLP_UP : !has_high ? GLP_LO : c.lower < c.upper ? GLP_DB : GLP_FX;
    glp_set_row_bnds(problem, static_cast<int>(r) + 1, kind, c.lower, c.upper);
  }
  const ByColumns matrix = by_columns(model);
  for (std::size_t j = 0; j < model.upper.size(); ++j) {
    const int column = static_cast<int>(j) + 1;
    glp_set_col_bnds(problem, column, GLP_DB, 0, model.upper[j]);
    glp_set_obj_coef(problem, column, model.objective[j]);
    if (model.whole[j] != 0) glp_set_col_kind(problem, column, GLP_IV);
    const auto first = static_cast<std::size_t>(matrix.start[j]), past = static_cast<std::size_t>(matrix.start[j + 1]);
    std::vector<int> rows{0};  // GLPK counts from 1
    std::vector<double> factors{0};
    for (std::size_t k = first; k < past; ++k) {
      rows.push_back(matrix.row[k] + 1);
      factors.push_back(matrix.factor[k]);
    }
    glp_set_mat_col(problem, column, static_cast<int>(past - first), rows.data(), factors.data());
  }
}

LinearAnswer by_glpk(const LinearModel& model, double seconds) {
  glp_term_out(GLP_OFF);
  glp_prob* problem = glp_create_prob();
  load_glpk(problem, model);
  glp_iocp options;
  glp_init_iocp(&options);
  options.presolve = GLP_ON;
  options.msg_lev = GLP_MSG_OFF;
  options.clq_cuts = GLP_ON;
  options.mir_cuts = GLP_ON;
  options.mip_gap = 0;
  options.tm_lim = static_cast<int>(seconds * 1000);
  const int code = glp_intopt(problem, &options);
  LinearAnswer answer;
  const int status = glp_mip_status(problem);
  if (code == GLP_ENOPFS || (code == 0 && status == GLP_NOFEAS)) answer.outcome = Outcome::Infeasible;
  if (code == 0 && status == GLP_OPT) {
    answer.outcome = Outcome::Optimal;
    for (std::size_t j = 0; j < model.upper.size(); ++j)
      answer.values.push_back(glp_mip_col_val(problem, static_cast<int>(j) + 1));
  }
  glp_delete_prob(problem);
  return answer;
}

}  // namespace

LinearAnswer solve_linear(const LinearModel& model, Program program, double seconds) {
  return program == Program::Cbc ? by_cbc(model, seconds) : by_glpk(model, seconds);
}

}  // namespace stringcourse::oracle
