// Mortar by the kind of product that the job picks, water and grout on the order list. Published yields disagree by a
// factor of six: every figure is listed with its source, and the range that they span.
#include <algorithm>

#include "answer/order_parts.hpp"

namespace stringcourse::ordering {
namespace {

/// Parts by volume, in quarters: cement, lime, sand. SOURCE: rule "mortar-proportions".
struct Mix {
  std::int64_t cement = 4, lime = 0, sand = 12;
  [[nodiscard]] std::int64_t raw() const { return cement + lime + sand; }
};
Mix mix_of(MortarOf of, MortarType type) {
  if (of == MortarOf::MasonryCement) return {};
  switch (type) {
    case MortarType::M: return {4, 1, 14};
    case MortarType::S: return {4, 2, 18};
    case MortarType::N: return {4, 4, 24};
    case MortarType::O: return {4, 8, 36};
  }
  return {};
}

struct Product {
  MortarOf of;
  MortarType type;
  Mix mix;
};
Product product_of(const Answer& answer) {
  const Ordering& stated = stated_in(answer);
  const MortarOf of = stated.mortar.value_or(MortarOf::Premix);
  const MortarType type = stated.type.value_or(MortarType::S);
  return {of, type, mix_of(of, type)};
}

/// Bags of the binder that make a volume. A bag of premix makes 0.7 cu ft; a bag of cement is one cu ft, and 38 of raw
/// materials make 27. SOURCE: rules "mortar-premix-yield", "mortar-rule-38".
Fraction bags_for(const Product& product, Fraction volume) {
  if (product.of == MortarOf::Premix) return {volume.of * 10, volume.over * 7 * kCubicFoot};
  return {volume.of * 38 * product.mix.cement, volume.over * 27 * product.mix.raw() * kCubicFoot};
}

/// Blocks of 16 in or 390 mm, for which figures are published.
bool is_usual(const Series& series) {
  return (series.full == Length::sixteenths(250) && series.height == Length::sixteenths(122)) ||
         (series.full == Length::millimetres(390) && series.height == Length::millimetres(190));
}

MortarFor by_bag(const Product& product, std::int64_t blocks) {
  switch (product.of) {
    case MortarOf::Premix: return {"mortar-blocks-a-bag", MortarBy::BlocksToBag, {blocks, 8}, {blocks, 6}};
    case MortarOf::MasonryCement:
      return {"mortar-bags-a-hundred", MortarBy::BlocksToBag, {blocks * 5, 200}, {blocks * 3, 100}};
    case MortarOf::CementLime: break;
  }
  return {"mortar-blocks-a-cement-bag", MortarBy::BlocksToBag, {blocks, 50}, {blocks, 50}};
}

/// The article of a range of figures; `times`: of it to a bag of the binder.
Article ranged(const std::vector<MortarFor>& figures, std::optional<MortarBy> by, Fraction times, Article article) {
  const auto amount = [&](const Fraction& bags) { return Fraction{bags.of * times.of, bags.over * times.over}.up(); };
  const bool chosen = by && std::ranges::contains(figures, *by, &MortarFor::by);
  bool first = true;
  for (const MortarFor& figure : figures) {
    Figure shown{figure.rule, amount(figure.least), amount(figure.most), chosen && figure.by == *by};
    if (!chosen || shown.chosen) {
      article.least = first ? shown.least : std::min(article.least, shown.least);
      article.most = first ? shown.most : std::max(article.most, shown.most);
      first = false;
    }
    article.figures.push_back(shown);
  }
  article.net = article.least;
  return article;
}

std::string_view type_letter(MortarType type) {
  constexpr std::string_view kLetters[] = {"M", "S", "N", "O"};
  return kLetters[static_cast<std::size_t>(type)];
}

/// Of what the sand is sold in, to a cubic foot of it.
struct Loose {
  SoldIn sold;
  Fraction times;
};
Loose loose_for(const Answer& answer, int waste) {
  if (answer.building.tape == Tape::Inches) return {SoldIn::CubicFeet, {100 + waste, 100}};
  return {SoldIn::TenthCubicMetres, {kCubicFoot * (100 + waste), 100 * (100 * kLitre)}};
}

void add_sand(Order& order, const Answer& answer, const Product& product, const std::vector<MortarFor>& figures,
              std::optional<MortarBy> by) {
  const int waste = hundredths(order, "/order/sand_waste", "assumed-sand-waste", stated_in(answer).sand_waste, 10);
  const Loose loose = loose_for(answer, waste);
  const Fraction times{loose.times.of * product.mix.sand, loose.times.over * product.mix.cement};
  order.articles.push_back(
      ranged(figures, by, times,
             {.id = "sand", .name = fact("article-sand"), .sold = loose.sold, .wanted = HoldPoint::FirstCourse}));
}

/// Gallons or litres to a bag: 5 to 6 quarts of premix, 5 to 6 gallons of cement. SOURCE: rule "mortar-water".
void add_water(Order& order, const Answer& answer, const Product& product) {
  const Article& binder =
      *std::ranges::find_if(order.articles, [](const Article& article) { return article.id.starts_with("mortar/"); });
  const std::int64_t quarts = product.of == MortarOf::Premix ? 5 : 20;
  const std::int64_t more = product.of == MortarOf::Premix ? 6 : 24;
  const bool inches = answer.building.tape == Tape::Inches;
  // A quart is 0.946352946 litres.
  const auto amount = [&](std::int64_t bags, std::int64_t each) {
    return inches ? Fraction{bags * each, 4}.up()
                  : Fraction{static_cast<int128>(bags) * each * 946'352'946, 1'000'000'000}.up();
  };
  const std::int64_t least = amount(binder.least, quarts), most = amount(binder.most, more);
  order.articles.push_back({.id = "water",
                            .name = fact("article-water"),
                            .sold = inches ? SoldIn::Gallons : SoldIn::Litres,
                            .wanted = HoldPoint::FirstCourse,
                            .net = least,
                            .least = least,
                            .most = most,
                            .figures = {{"mortar-water", least, most}}});
}

}  // namespace

std::vector<MortarFor> mortar_figures(const Answer& answer, const supply::MortarJoints& joints) {
  const Product product = product_of(answer);
  const int waste = stated_in(answer).mortar_waste.value_or(10);
  const int128 held = thousandths(joints.all());
  const Fraction in_joints = bags_for(product, {held * (100 + waste), 100});
  std::vector<MortarFor> figures{{"mortar-joints", MortarBy::Joints, in_joints, in_joints}};
  if (!std::ranges::all_of(answer.building.series, is_usual)) return figures;
  const Fraction litres = bags_for(product, {joints.blocks * kLitre * 5, 4});
  figures.push_back({"mortar-litres-a-block", MortarBy::LitresEach, litres, litres});
  const Fraction feet = bags_for(product, {joints.blocks * kCubicFoot * 85, 1'000});
  figures.push_back({"mortar-feet-a-hundred", MortarBy::CubicFeet, feet, feet});
  figures.push_back(by_bag(product, joints.blocks));
  return figures;
}

void add_mortar(Order& order, const Answer& answer, std::optional<MortarBy> by) {
  const Ordering& stated = stated_in(answer);
  const std::optional<MortarBy> picked = by ? by : stated.mortar_by;
  const Product product = product_of(answer);
  hundredths(order, "/order/mortar_waste", "assumed-mortar-waste", stated.mortar_waste, 10);
  const std::vector<MortarFor> figures = mortar_figures(answer, order.mortar);
  const FactValue letter(type_letter(product.type));
  order.assumed.push_back({"/order/type", fact("assumed-mortar-type", {letter}), stated.type.has_value()});
  const auto add = [&](std::string id, Fact name, Fraction times) {
    Article article{
        .id = std::move(id), .name = std::move(name), .sold = SoldIn::Bags, .wanted = HoldPoint::FirstCourse};
    order.articles.push_back(ranged(figures, picked, times, std::move(article)));
  };
  switch (product.of) {
    case MortarOf::Premix: add("mortar/premix", fact("article-premix", {letter}), {1, 1}); break;
    case MortarOf::MasonryCement: add("mortar/masonry-cement", fact("article-masonry-cement", {letter}), {1, 1}); break;
    case MortarOf::CementLime:
      add("mortar/cement", fact("article-cement"), {1, 1});
      add("lime", fact("article-lime"), {product.mix.lime, product.mix.cement});
      break;
  }
  order.assumed.push_back({"/order/mortar", order.articles.back().name, stated.mortar.has_value()});
  if (product.of != MortarOf::Premix) add_sand(order, answer, product, figures, picked);
  add_water(order, answer, product);
}

void add_grout(Order& order, const Answer& answer) {
  int128 held = 0;
  for (const supply::GroutPour& pour : answer.tallies.grout) held += thousandths(pour.all());
  if (held == 0) return;
  const Ordering& stated = stated_in(answer);
  const int loss = hundredths(order, "/order/grout_loss", "assumed-grout-loss", stated.grout_loss, supply::kGroutLoss);
  const Fraction wanted{held * (100 + loss), 100};
  Article article{.id = "grout/bags",
                  .name = fact("article-grout-bags"),
                  .sold = SoldIn::Bags,
                  .wanted = HoldPoint::Grout,
                  .note = fact("article-grout-pours", {answer.tallies.grout.size()})};
  if (stated.grout_as.value_or(GroutAs::Bags) == GroutAs::Bags) {
    // 0.60 cu ft to a bag, or 0.675.
    const std::int64_t most = Fraction{wanted.of * 5, wanted.over * 3 * kCubicFoot}.up();
    const std::int64_t least = Fraction{wanted.of * 40, wanted.over * 27 * kCubicFoot}.up();
    article.figures = {{"grout-bag-small", most, most}, {"grout-bag-large", least, least}};
    article.least = article.net = least, article.most = most;
  } else {
    const bool inches = answer.building.tape == Tape::Inches;
    article.id = "grout/truck", article.name = fact("article-grout-truck");
    article.sold = inches ? SoldIn::QuarterCubicYards : SoldIn::TenthCubicMetres;
    const int128 step = inches ? 27 * kCubicFoot : 400 * kLitre;  // four of what is sold
    article.net = Fraction{held * 4, step}.up();
    for (const supply::GroutPour& pour : answer.tallies.grout)  // a truck comes for each
      article.most += Fraction{thousandths(pour.all()) * 4 * (100 + loss), step * 100}.up();
    article.least = article.most;
    article.spare = article.least - article.net;
  }
  order.assumed.push_back({"/order/grout_as", article.name, stated.grout_as.has_value()});
  order.articles.push_back(std::move(article));
}

}  // namespace stringcourse::ordering
