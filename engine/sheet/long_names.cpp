// The names too long for some drawing, with the keys that stand for them there.
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

Table names_table(const Context& context) {
  Table table = new_table(context.page.drawing.width(), context.words.title_names,
                          {{context.words.name_key, 12}, {context.words.name, 88}}, kText);
  for (const LongName& name : context.names) table.add_row({name.key, name.name});
  return table;
}

}  // namespace

constinit const SheetKind kNamesSheet{
    .name = "names",
    .purpose = &words::SheetWords::purpose_names,
    .caution = {"engineer"},
    .table = names_table,
    .note = &words::SheetWords::names_note,
};

}  // namespace stringcourse::sheet
