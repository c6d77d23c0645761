#include "ink/pdf.hpp"

#include <algorithm>

#include "outside_tools.hpp"
#include "specimen.hpp"

namespace stringcourse::ink_test {
namespace {

std::string pdf_of(const std::vector<Sheet>& sheets) {
  return ink::pdf_bytes(sheets, {.title = "Specimen, set A", .language = "en"});
}

std::string file_of(const std::string& name, const std::vector<Sheet>& sheets) {
  return write_file(name + ".pdf", pdf_of(sheets));
}

Sheet sheet_with(Text text) {
  Sheet sheet;
  sheet.name = "one";
  sheet.title = "One line";
  Group group;
  group.role = Role::Paragraph;
  group.texts.push_back(std::move(text));
  sheet.groups.push_back(std::move(group));
  return sheet;
}

/// A portable greymap's head and pixels, as pdftoppm writes it.
struct Picture {
  int width = 0, height = 0;
  std::string pixels;
  int at(int x, int y) const { return static_cast<unsigned char>(pixels[static_cast<std::size_t>(y * width + x)]); }
};

Picture picture_of(const std::string& pdf, const std::string& options) {
  const std::string stem = pdf + ".picture";
  EXPECT_EQ(run("pdftoppm -gray -singlefile " + options + " " + pdf + " " + stem).status, 0);
  std::istringstream file(read_file(stem + ".pgm"));
  std::string magic;
  int brightest = 0;
  Picture picture;
  file >> magic >> picture.width >> picture.height >> brightest;
  file.get();
  picture.pixels.assign(std::istreambuf_iterator<char>(file), {});
  EXPECT_EQ(picture.pixels.size(), static_cast<std::size_t>(picture.width * picture.height));
  return picture;
}

TEST(Pdf, QpdfFindsNoFault) {
  const Outcome outcome = run("qpdf --check " + file_of("check", {specimen(), specimen()}));
  EXPECT_EQ(outcome.status, 0) << outcome.output;
  EXPECT_TRUE(holds(outcome.output, "No syntax or stream encoding errors")) << outcome.output;
  EXPECT_FALSE(holds(outcome.output, "WARNING")) << outcome.output;
}

TEST(Pdf, SetWithoutSheetsIsStillAFile) { EXPECT_EQ(run("qpdf --check " + file_of("empty", {})).status, 0); }

TEST(Pdf, BothFontsAreEmbeddedOnceAsSubsetsWithUnicode) {
  const std::string fonts = run("pdffonts " + file_of("fonts", {specimen(), specimen()})).output;
  EXPECT_EQ(times(fonts, "B612-Regular"), 1) << fonts;
  EXPECT_EQ(times(fonts, "B612-Bold"), 1) << fonts;
  EXPECT_EQ(times(fonts, "CID Type 0C"), 2) << fonts;
  EXPECT_EQ(times(fonts, "yes yes yes"), 2) << fonts;  // embedded, subset, to-Unicode
}

TEST(Pdf, SearchFindsFractionsAndAccents) {
  Sheet sheet = specimen();
  sheet.groups.push_back(
      sheet_with({{150'000, 100'000}, "Größe Ñandú ½", 3'500, Weight::Bold, Anchor::Start, Ink::Black, 0}).groups[0]);
  const std::string text = run("pdftotext -layout " + file_of("text", {sheet}) + " -").output;
  for (const char* wanted :
       {"14'-7 5/16\" = 175 5/16\"", "47 5/8\"", "15'-11 15/16\"", "7 5/8\" up", "Größe Ñandú ½"}) {
    EXPECT_TRUE(holds(text, wanted)) << wanted << " not in\n" << text;
  }
}

TEST(Pdf, CharacterThatTheFontLacksIsDrawnAsABoxAndStillFound) {
  const Sheet sheet = sheet_with({{100'000, 100'000}, "\u25B3", 10'000, Weight::Regular, Anchor::Start, Ink::Black, 0});
  const std::string file = file_of("lacking", {sheet});
  EXPECT_TRUE(holds(run("pdftotext " + file + " -").output, "\u25B3"));
  const Picture picture = picture_of(file, "-r 50");
  EXPECT_TRUE(std::ranges::any_of(picture.pixels, [](char p) { return static_cast<unsigned char>(p) < 128; }));
}

TEST(Pdf, TagsNameHeadingFiguresParagraphsAndTable) {
  const std::string tags = run("pdfinfo -struct-text " + file_of("tags", {specimen()})).output;
  for (const char* wanted : {"Document", "Sect \"Specimen of lines and letters\"", "H1", "Figure", "P (block)", "Table",
                             "TR", "TD", "\"412\""}) {
    EXPECT_TRUE(holds(tags, wanted)) << wanted << " not in\n" << tags;
  }
  EXPECT_EQ(times(tags, "TD\n"), 4);  // two rows of two cells
  const std::string facts = run("pdfinfo " + file_of("tags", {specimen()})).output;
  EXPECT_TRUE(holds(facts, "Tagged:          yes")) << facts;
  EXPECT_TRUE(holds(facts, "Specimen, set A")) << facts;
}

TEST(Pdf, FigureCarriesItsLabelAsAlternativeAndFrameIsAnArtifact) {
  const std::string bytes = pdf_of({specimen()});
  EXPECT_TRUE(holds(bytes, "/S /Figure") && holds(bytes, "/Alt (Four pens, three dashes)"));
  EXPECT_EQ(times(bytes, "/Artifact BMC"), 1);
  EXPECT_TRUE(holds(bytes, "/Lang (en)"));
}

TEST(Pdf, FiguresInsideAFigureShareItsTagAndTextKeepsItsOwn) {
  Sheet sheet = sheet_with({{50'000, 50'000}, "inside", 2'500, Weight::Regular, Anchor::Start, Ink::Black, 0});
  Group outer;
  outer.label = "Wall AB";
  for (int k = 0; k < 3; ++k) {
    Group piece;
    piece.label = "AB-1-" + std::to_string(k + 1);
    piece.shapes.push_back(rectangle({k * 9'000, 0}, {k * 9'000 + 8'000, 8'000}, Fill::None, Pen::Medium));
    outer.groups.push_back(piece);
  }
  outer.groups.push_back(sheet.groups[0]);
  sheet.groups = {outer};
  const std::string bytes = pdf_of({sheet});
  EXPECT_EQ(times(bytes, "/S /Figure"), 1);
  EXPECT_EQ(times(bytes, "/S /P "), 1);
  EXPECT_EQ(times(bytes, "/Figure << /MCID"), 1);  // three pieces in one marked stretch
}

TEST(Pdf, SameSheetsGiveTheSameBytesAndOthersGiveOthers) {
  EXPECT_EQ(pdf_of({specimen()}), pdf_of({specimen()}));
  Sheet other = specimen();
  other.groups.back().groups[0].groups[0].texts[0].text = "full.";
  const auto identity = [](const std::string& bytes) { return bytes.substr(bytes.rfind("/ID ["), 40); };
  EXPECT_NE(identity(pdf_of({specimen()})), identity(pdf_of({other})));
}

TEST(Pdf, PaperSizesAreThoseOfTheSheets) {
  Sheet a4 = specimen();
  a4.width = paper_size(Paper::A4).width;
  a4.height = paper_size(Paper::A4).height;
  const std::string facts = run("pdfinfo -f 1 -l 2 " + file_of("paper", {specimen(), a4})).output;
  EXPECT_TRUE(holds(facts, "792 x 612 pts (letter)")) << facts;     // 11 x 8.5 in of 72 points
  EXPECT_TRUE(holds(facts, "841.89 x 595.276 pts (A4)")) << facts;  // 297 * 72 / 25.4 = 841.8898; 210: 595.2756
}

TEST(Pdf, LinesStandWhereTheSheetSays) {
  Sheet sheet = sheet_with({{200'000, 200'000}, ".", 2'500, Weight::Regular, Anchor::Start, Ink::Black, 0});
  Group group;
  group.shapes.push_back(rectangle({25'400, 50'800}, {50'800, 76'200}, Fill::Black, Pen::None));
  sheet.groups.push_back(group);
  // 100 dots an inch: the square is 1..2 in from the left and 2..3 in from the bottom of a page 850 dots tall.
  const Picture picture = picture_of(file_of("place", {sheet}), "-r 100 -aa no -aaVector no");
  for (int y = 850 - 298; y <= 850 - 202; y += 8) {
    for (int x = 102; x <= 198; x += 8) EXPECT_EQ(picture.at(x, y), 0) << x << ' ' << y;
  }
  for (const auto& [x, y] : {std::pair{97, 600}, {203, 600}, {150, 850 - 303}, {150, 850 - 197}}) {
    EXPECT_EQ(picture.at(x, y), 255) << x << ' ' << y;
  }
}

TEST(Pdf, SpecimenIsNeitherBlankNorBlackInOneBitPrint) {
  const Picture picture = picture_of(file_of("ink", {specimen()}), "-r 60");
  const auto dark = std::ranges::count_if(picture.pixels, [](char p) { return static_cast<unsigned char>(p) < 128; });
  EXPECT_GT(dark, std::ssize(picture.pixels) / 200);  // the two black fields alone are 11.7 cm2 of 603 cm2: 1.9 %
  EXPECT_LT(dark, std::ssize(picture.pixels) / 2);
}

TEST(Pdf, SubsetFontDrawsTheSameGlyphsAsAnyOther) {
  // The same line, once beside nothing else and once in a file whose fonts hold many more glyphs.
  const Text line{
      {20'000, 100'000}, "Größe 14'-7 5/16\" Qgj & ⅜ ✓", 7'000, Weight::Regular, Anchor::Start, Ink::Black, 0};
  std::string all;
  for (int code = 33; code < 127; ++code) all += static_cast<char>(code);
  const Sheet many =
      sheet_with({{1'000, 1'000}, all + "éàüñÅØ½¾", 2'500, Weight::Regular, Anchor::Start, Ink::Black, 0});
  const Picture alone = picture_of(file_of("alone", {sheet_with(line)}), "-f 1 -l 1 -r 100");
  const Picture among = picture_of(file_of("among", {sheet_with(line), many}), "-f 1 -l 1 -r 100");
  EXPECT_EQ(alone.pixels, among.pixels);
  EXPECT_TRUE(std::ranges::any_of(alone.pixels, [](char p) { return static_cast<unsigned char>(p) < 64; }));
}

TEST(Pdf, HostileWordsStayWords) {
  const std::string hostile = ")) >> endobj \\ ( \x01\x7f\xff\xc3 \xf0\x9f\x98\x80";
  Sheet sheet = sheet_with({{20'000, 100'000}, hostile, 3'500, Weight::Regular, Anchor::Middle, Ink::Black, -7});
  sheet.title = sheet.name = hostile;
  Group figure;
  figure.label = hostile;
  figure.circles.push_back({{100'000, 100'000}, 5'000, Pen::Thin, Ink::Red, Fill::CrossHatch});
  sheet.groups.push_back(figure);
  const Outcome outcome =
      run("qpdf --check " + write_file("hostile.pdf", ink::pdf_bytes(std::vector{sheet}, {.title = hostile})));
  EXPECT_EQ(outcome.status, 0) << outcome.output;
}

TEST(Pdf, LongSetIsHandedOutPageByPage) {
  std::size_t handed = 0, largest = 0;
  ink::PdfWriter writer(
      [&](std::string_view piece) {
        handed += piece.size();
        largest = std::max(largest, piece.size());
      },
      {.title = "Long set"});
  std::size_t before = handed;
  for (int page = 0; page < 300; ++page) {
    writer.add(specimen());
    EXPECT_GT(handed, before);  // nothing of a page is held back
    before = handed;
  }
  writer.finish();
  // The largest piece is a page or a font program, and no font program is larger than the file it comes from.
  EXPECT_LT(largest, paper::font_file(Weight::Bold).size());
  EXPECT_GT(handed, 300 * std::size_t{5'000});  // the specimen's content alone is more than 5 kB
}

}  // namespace
}  // namespace stringcourse::ink_test
