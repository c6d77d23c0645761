#pragma once
// What a layout may give up, and that it lists just what it gives up.
#include "proof/facts.hpp"

namespace stringcourse::proof {

/// A run of one course that gives something up from one place to another.
Concession given_up(Concession::What what, const Run& run, Length from, Length to, Length amount);
/// ... of one piece: from its start to its end, amount its length.
Concession piece_given_up(Concession::What what, const Run& run, const Piece& piece);

/// How far joints may be from the design thickness at all: 1/4 in (6 mm) less, 3/8 in (10 mm) more each.
Length narrowest_on_site(const Series& series);
Length widest_on_site(const Series& series);
bool in_site_tolerance(const Series& series, Length slack, std::int64_t joints);
/// No piece stands here, and it is not one joint alone between two things that are pointed to.
bool is_bare(const Series& series, const RunFacts& run);

/// Whether the layout says that something is given up on this wall in this course: its ends may then not fit the
/// corner.
bool gives_up_an_end(const Layout& layout, int wall, int course);

/// The violations that the layout lists as given up are taken away; what it lists and does not break is added.
Violations without_conceded(const Building& building, const Layout& layout, Violations found);

/// What the listed concessions weigh together.
std::int64_t weight_of_conceded(const Layout& layout);

}  // namespace stringcourse::proof
