#include "solve/answer_parts.hpp"
#include "solve/answer_words.hpp"
#include "solve/concession_findings.hpp"

namespace stringcourse::answer_parts {

namespace {

void write_finding(JsonOut& out, const Finding& finding) {
  out.object([&] {
    out.field("code", finding.code);
    out.field("place", finding.place);
    out.field("text", finding.text);
    out.field("rule", finding.rule);
    out.field("hold_point", hold_point_name(finding.hold_point));
  });
}

void write_offer(JsonOut& out, const Offer& offer, Tape tape) {
  out.object([&] {
    out.field("what", offer_name(offer.what));
    out.field("place", offer.place);
    out.field("name", offer.name);
    out.field("text", offer.text);
    write_length(out, "change", offer.change, tape);
    if (offer.what == OfferWhat::ChangeWidth) write_length(out, "shift", offer.shift, tape);
    if (offer.conceded != 0) out.field("conceded_saved", offer.conceded);
    out.field("cuts_saved", offer.cuts);
    out.field("short_laps_saved", offer.short_laps);
    out.field("bars_saved", offer.bars);
    out.list("mends", [&] {
      for (const std::size_t finding : offer.mends) out.number(static_cast<std::int64_t>(finding));
    });
  });
}

void write_free_places(JsonOut& out, const Building& building, const FreePlaces& places) {
  out.object([&] {
    out.field("opening", building.openings[static_cast<std::size_t>(places.opening)].name);
    out.list("from", [&] {
      for (const Length from : places.from) out.number(from.in_nanometres());
    });
  });
}

void write_cost(JsonOut& out, std::string_view key, const Cost& cost) {
  out.object(key, [&] {
    out.field("short_laps", cost.short_laps);
    out.field("cuts", cost.cuts);
    out.field("short_pieces", cost.short_pieces);
    out.field("shifted_joints", cost.shifted_joints);
    out.field("extra_bars", cost.extra_bars);
    out.field("joint_deviation_nm", cost.joint_deviation);
    out.field("units", cost.units);
    if (cost.conceded != 0) out.field("conceded", cost.conceded);
  });
}

void write_proof(JsonOut& out, const Layout& layout) {
  out.object("proof", [&] {
    out.field("proven", layout.proven);
    write_cost(out, "least_possible", layout.least_possible);
    out.field("cut_lengths", layout.cut_lengths);
    out.field("cut_lengths_at_least", layout.cut_lengths_at_least);
    out.field("relaxed_piece", layout.relaxed_piece);
    out.field("relaxed_bearing", layout.relaxed_bearing);
  });
}

void write_concession(JsonOut& out, const Building& building, const Concession& concession) {
  out.object([&] {
    out.field("what", concession_name(concession.what));
    out.field("side", wall_name(building, concession.wall));
    out.field("course", concession.course);
    write_length(out, "from", concession.from, building.tape);
    write_length(out, "to", concession.to, building.tape);
    write_length(out, "amount", concession.amount, building.tape);
  });
}

void write_stop(JsonOut& out, const Building& building, const Stopped& stop) {
  out.object([&] {
    out.field("side", wall_name(building, stop.wall));
    out.field("first_course", stop.first_course);
    out.field("last_course", stop.last_course);
    write_length(out, "from", stop.start, building.tape);
    write_length(out, "to", stop.end, building.tape);
    out.field("rule", stop.rule);
    out.field("remedy", stop.remedy);
  });
}

}  // namespace

void write_verdict(JsonOut& out, const Answer& answer) {
  out.list("stopped", [&] {
    for (const Stopped& stop : answer.layout.stopped) write_stop(out, answer.building, stop);
  });
  if (!answer.layout.conceded.empty()) {
    out.list("conceded", [&] {
      for (const Concession& concession : answer.layout.conceded) write_concession(out, answer.building, concession);
    });
  }
  out.list("findings", [&] {
    for (const Finding& finding : answer.findings) write_finding(out, finding);
  });
  out.list("offers", [&] {
    for (const Offer& offer : answer.offers) write_offer(out, offer, answer.building.tape);
  });
  out.field("offers_complete", answer.offers_complete);
  out.list("free_places", [&] {
    for (const FreePlaces& places : answer.free_places) write_free_places(out, answer.building, places);
  });
  write_cost(out, "cost", answer.layout.cost);
  write_proof(out, answer.layout);
}

}  // namespace stringcourse::answer_parts
