#pragma once
// Tables and sentences one under another while there is room. What has none is left to the sheets behind, and that is
// said: room for it and for a last sentence is kept free.
#include <string>
#include <vector>

#include "paper/table.hpp"

namespace stringcourse::paper {

class Stack {
 public:
  /// `more`: said where something was left out. `last`: said in any case, if it says something.
  Stack(Pad& pad, Area box, std::string more, std::string last = {});
  void hang(const Table& table);
  [[nodiscard]] bool has_room(const std::vector<std::string>& texts) const;
  [[nodiscard]] bool has_room(const Table& table) const;
  void write(const std::string& text, Weight weight, Ink ink = Ink::Black);
  /// The last sentence, and before it that something was left out.
  void finish();

 private:
  [[nodiscard]] Micrometres height_of(const std::string& text) const;
  void write_here(const std::string& text, Weight weight, Ink ink);

  Pad& pad_;
  Area box_;
  std::string more_, last_;
  Micrometres floor_ = 0;
  bool left_out_ = false;
};

}  // namespace stringcourse::paper
