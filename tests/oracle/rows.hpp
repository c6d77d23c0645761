#pragma once
// Between brute.cpp and brute_rows.cpp: one run and one row, judged.
#include <string>
#include <vector>

#include "oracle/brute.hpp"

namespace stringcourse::oracle {

/// The run with its joints counted and its slack measured.
FilledRun measured(const bond::RowRun& run, std::vector<bond::Chosen> pieces);

/// Which rule a filled run breaks by itself (not bars or zones); empty: none.
std::string run_broken(const bond::Panel& panel, const bond::Row& row, const bond::RowRun& run,
                       const FilledRun& filled);

/// A row made of the given runs, with its joints, cells and cost.
struct RowOrRule {
  std::string broken;  // the rule that it breaks (bars, zones); empty: `row` is lawful
  FilledRow row;
};
RowOrRule filled_row(const bond::Panel& panel, const bond::Row& row, const std::vector<const FilledRun*>& runs);

}  // namespace stringcourse::oracle
