#pragma once
// The field table of the whole answer document.
#include <span>

#include "document/shown_bars.hpp"
#include "document/shown_laying.hpp"
#include "document/shown_lists.hpp"
#include "document/shown_order.hpp"
#include "document/shown_site.hpp"
#include "document/shown_top.hpp"
#include "document/shown_verdict.hpp"
#include "job/write.hpp"

namespace stringcourse::document {

inline constexpr int kAnswerVersion = 1;

enum class Whole { Whole, Stopped };
}  // namespace stringcourse::document
namespace stringcourse {
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<document::Whole>{"whole", "stopped"};
}
namespace stringcourse::document {

/// A part of the answer as one of its lists.
template <class Part>
constexpr auto part(std::string_view name, Part part, std::string_view description = {}) {
  return shown(name, [part](const View&, const Answer& of) -> const auto& { return part(of); }, description);
}

inline Verbatim job_json(const View& view, const Answer&) {
  std::string job = write_job(view.answer.job);
  while (!job.empty() && job.back() == '\n') job.pop_back();
  return {std::move(job)};
}

template <>
struct Shown<Answer> {
  static constexpr std::string_view name = "answer";
  static constexpr std::string_view description =
      "What a job comes to: every piece, joint, bar, count and finding. Lengths are whole nanometres; places along a "
      "side are measured "
      "from its start corner, heights from the datum (design top of course 1).";
  static constexpr auto fields = std::tuple{
      brief(shown(
          "stringcourse_answer", [](const View&, const Answer&) { return kAnswerVersion; },
          "version of this document")),
      brief(shown(
          "state",
          [](const View&, const Answer& of) { return of.layout.stopped.empty() ? Whole::Whole : Whole::Stopped; },
          "stopped: at least one run has no lawful layout, see \"stopped\"")),
      brief(shown("job", job_json, "the job as read (job.schema.json)")),
      brief(shown(
          "tape_step", [](const View& view, const Answer&) { return tape_step(view.tape()); },
          "the finest step of the job's tape")),
      brief(part("series", [](const Answer& of) -> const auto& { return of.building.series; })),
      brief(part("corners", [](const Answer& of) -> const auto& { return of.building.corners; })),
      brief(part(
          "sides", [](const Answer& of) -> const auto& { return of.building.walls; },
          "Sides in order, then interior walls.")),
      brief(part("junctions", [](const Answer& of) -> const auto& { return of.building.junctions; })),
      brief(part("courses", [](const Answer& of) -> const auto& { return of.building.courses; })),
      brief(shown(
          "height", [](const View&, const Answer& of) { return height_as_built(of.building); },
          "of the walls as built, from the underside of the first bed joint to the top of the last course's units")),
      brief(part("openings", [](const Answer& of) -> const auto& { return of.building.openings; })),
      brief(part("control_joints", [](const Answer& of) -> const auto& { return of.building.control_joints; })),
      brief(part("stopped", [](const Answer& of) -> const auto& { return of.layout.stopped; })),
      brief(shown(
          "conceded",
          [](const View&, const Answer& of) {
            return of.layout.conceded.empty() ? std::nullopt
                                              : std::optional(std::span<const Concession>(of.layout.conceded));
          },
          "Rules given up because no layout was found that keeps them all; absent where all are kept.")),
      brief(shown("findings", &Answer::findings, "Sorted by hold point.")),
      shown("offers", &Answer::offers, "Best first."),
      shown("offers_complete", &Answer::offers_complete,
            "true: every small change was tried; of a large building only those that are likeliest to help are"),
      shown("free_places", &Answer::free_places, "Where an opening lays without a cut."),
      brief(part("cost", [](const Answer& of) -> const auto& { return of.layout.cost; })),
      brief(shown("proof", [](const View&, const Answer& of) { return Proof{of.layout}; })),
      shown(
          "ground",
          [](const View&, const Answer& of) {
            return of.job.readings.empty() ? std::nullopt : std::optional(Ground{});
          },
          "absent where nothing was read"),
      shown(
          "laying", [](const View&, const Answer& of) -> const auto& { return of.laid; },
          "absent while something is dragged"),
      shown(
          "poured",
          [](const View& view, const Answer& of) { return view.placed == Placed::Omit ? std::nullopt : of.dowels_now; },
          "Only once the logs speak of concrete."),
      shown(
          "dowels", [](const View& view, const Answer& of) { return filled(view, of.dowels); },
          "Where dowels must stand before the pour; once the logs speak of concrete, where they were poured to."),
      brief(shown("counts", &Answer::tallies)),
      shown("saw_list", &Answer::saw_list),
      shown("gauge_rod", &Answer::gauge_rod, "Lowest first."),
      shown("lintels", &Answer::lintels),
      shown("bridged", &Answer::bridged, "What goes over each opening, and what holds it up meanwhile."),
      shown("heads", &Answer::heads, "Heads off a course line, and what can be done."),
      shown("bars", [](const View& view, const Answer& of) { return filled(view, of.layout.bars); }),
      shown("bar_pieces", &Answer::bar_pieces),
      shown("joint_reinforcement", &Answer::wires),
      shown("ties", &Answer::ties),
      shown("bars_from_stock", &Answer::bars_from_stock, "Stock lengths to buy; none while something is dragged."),
      shown("order", &Answer::order, "What has to be on the site."),
      shown("programme", &Answer::programme, "What is done when."),
      shown("weather", &Answer::weather, "Day by day of the forecast."),
      shown("site", &Answer::site, "What runs out, what comes with which truck, where pallets stand."),
      shown(
          "cleanouts", [](const View& view, const Answer& of) { return filled(view, of.cleanouts); },
          "The holes at the foot of each high pour, through which the bars' cells are cleaned."),
      shown(
          "inspection", [](const View& view, const Answer& of) { return filled(view, of.inspection); },
          "What is looked at before each pour; afterwards none of it can be seen."),
      shown(
          "pour_cards", [](const View& view, const Answer& of) { return filled(view, of.pour_cards); },
          "Lift by lift from the bottom: the order in which grout goes in."),
      shown(
          "plates", [](const View& view, const Answer& of) { return filled(view, of.plates); },
          "Pieces of plate with their bolts, by side, then along it; none where the job asks for no bolts."),
      shown(
          "cards", [](const View& view, const Answer&) { return rules_on_cards(view); },
          "What rules say of bolts, cold, heat and wind."),
      shown(
          "access_zone", [](const View&, const Answer& of) { return access_zone(of.building); },
          "Beside walls without their final support; absent where there are none."),
      shown(
          "runs", [](const View& view, const Answer& of) { return filled(view, of.layout.runs); },
          "Stretches of one course without a break, by side, course, place."),
  };
};

}  // namespace stringcourse::document
