#include "reports/sheet_html.h"

#include "reports/svg_drawing.h"
#include "reports/xml_text.h"
#include "units/letters.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

// The margins are those that a mould's picture is made for. Weights: see
// helpers/pdf/sheet_printing.cpp.
constexpr auto style = R"(
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 190mm; color: #000; background: #fff;
  font: 10.5pt/1.3 sans-serif; }
h1 { font-size: 22pt; margin: 0; }
h2 { display: flex; justify-content: space-between; align-items: baseline; gap: 5mm;
  font-size: 18pt; margin: 5.5mm 0 0; border-top: 1.2mm solid #000; }
h2 span { font-size: 14pt; font-weight: normal; white-space: nowrap; }
h3 { font-size: 13pt; margin: 3.5mm 0 0; }
h2, h3, .head, .caution:has(+ section) { break-after: avoid; }
p { margin: 1mm 0; }
.subtitle { font-size: 12pt; }
.order { display: flex; gap: 3mm; font-size: 15pt; font-weight: bold; margin: 2mm 0; }
.box { flex: none; display: inline-block; width: 7mm; height: 7mm; border: 0.6mm solid #000; }
.danger { border: 1.6mm solid #000; padding: 2mm 3mm; font-size: 16pt; font-weight: bold; }
.caution { border-left: 1.5mm solid #000; padding-left: 2.5mm; font-weight: bold; }
.note { font-size: 9pt; }
.aid { border: 1.2mm solid #000; margin: 3mm 0 0; padding: 2mm 3mm 1mm; font-size: 12pt; }
.aid svg { flex: none; width: 7.5mm; height: 7.5mm; }
.aid h2 { border: 0; margin: 0; font-size: 16pt; }
.aid div { display: flex; margin-top: 0.5mm; line-height: 1.15; }
.aid b { flex: none; width: 32mm; }
.aid .top { align-items: flex-end; gap: 2mm; margin-bottom: 1.5mm; font-size: 10pt; }
.aid .top span { flex: 1; border-bottom: 0.3mm solid #000; }
.aid p { margin: 1mm 0 0; font-size: 8pt; }
.order, .danger, .caution, .aid, tr, svg, .counts, .whole, tbody.together { break-inside: avoid; }
table { width: 100%; border-collapse: collapse; }
th { text-align: left; font-size: 8.5pt; font-weight: normal; }
th.lot { padding-left: 2mm; }
td { height: 11mm; border-bottom: 0.15mm solid #000; vertical-align: middle; padding: 0.5mm 0; }
.tick { width: 10mm; }
.what { overflow-wrap: anywhere; }
.what b { font-size: 20pt; font-weight: normal; line-height: 1.1; }
.vessel { display: flex; justify-content: space-between; align-items: flex-end; gap: 5mm; }
.vessel h3 { font-weight: bold; }
.tare { display: flex; align-items: flex-end; gap: 1mm; font-size: 8.5pt; white-space: nowrap; }
.tare i { width: 28mm; border-bottom: 0.3mm solid #000; }
.weight { width: 48mm; text-align: right; font-size: 24pt; font-weight: bold; line-height: 1;
  white-space: nowrap; }
.sum { width: 26mm; text-align: right; white-space: nowrap; font-size: 11pt; }
.sum b { font-size: 12pt; }
.lot { width: 30mm; padding: 0 1mm 0 2mm; }
.lot div { height: 9mm; border: 0.3mm solid #000; }
th.weight, th.sum { font-size: 8.5pt; font-weight: normal; }
.counts { display: flex; flex-wrap: wrap; gap: 2.5mm; }
.counts .box { font-size: 8pt; text-align: center; line-height: 6mm; }
.grid th { font-weight: bold; font-size: 9pt; border-bottom: 0.4mm solid #000; }
.grid td { height: auto; font-size: 13pt; padding: 1mm 2mm; }
.grid .tick { padding: 1mm 0; line-height: 1; }
.grid .marked td { font-weight: bold; border-top: 0.7mm solid #000;
  border-bottom: 0.7mm solid #000; }
.blanks { columns: 2; column-gap: 6mm; }
.blank { display: flex; align-items: flex-end; min-height: 10mm; padding-top: 1mm;
  break-inside: avoid; line-height: 1; }
.blank div { width: 44mm; }
.blank .line { flex: 1; border-bottom: 0.3mm solid #000; }
.blank .unit { width: 9mm; padding-left: 1mm; }
footer { margin-top: 4mm; font-size: 8pt; }
h1.page { break-before: page; }
.drawing { break-inside: avoid; }
.drawing svg { display: block; }
)";

std::string tag(const std::string& name, const std::string& look, const std::string& content) {
  return "<" + name + (look.empty() ? "" : " class=\"" + look + "\"") + ">" + content + "</" +
         name + ">";
}
std::string text_tag(const std::string& name, const std::string& look, const std::string& text) {
  return tag(name, look, xml_escaped(text));
}

std::string html(const SheetPage& page) {
  return text_tag("h1", "page", page.title) + "\n" + text_tag("p", "subtitle", page.subtitle);
}

std::string html(const SheetHeading& heading) {
  return tag("h2", "", xml_escaped(heading.text) + text_tag("span", "", heading.aside));
}

std::string html(const SheetStep& step) { return text_tag("h3", "", step.text); }

std::string html(const SheetWords& words) {
  if (!words.is_order) return text_tag("p", "", words.text);
  return tag("p", "order", "<span class=\"box\"></span>" + text_tag("span", "", words.text));
}

std::string html(const SheetWarning& warning) {
  if (warning.severity == Severity::note) return text_tag("p", "note", "\u2013 " + warning.text);
  const bool is_danger = warning.severity == Severity::danger;
  return text_tag("p", is_danger ? "danger" : "caution",
                  (is_danger ? "DANGER  " : "! ") + warning.text);
}

/// With the cross that marks first aid anywhere (ISO 7010-E003), and blanks for the numbers to
/// call.
std::string html(const SheetFirstAid& aid) {
  std::string top =
      "<svg viewBox=\"0 0 3 3\"><path d=\"M1 0h1v1h1v1h-1v1h-1v-1h-1v-1h1z\"/></svg>" +
      text_tag("h2", "", aid.title);
  for (const auto& number : aid.numbers) top += xml_escaped(number) + "<span></span>";
  std::string lines;
  for (const auto& line : aid.lines)
    lines += tag("div", "", text_tag("b", "", line.what) + text_tag("span", "", line.to_do)) + "\n";
  return tag("div", "aid", tag("div", "top", top) + "\n" + lines + text_tag("p", "", aid.source));
}

std::string row_of(const WeighRow& row) {
  std::string what = text_tag("b", "", row.name);
  if (!row.note.empty()) what += "<br>" + xml_escaped(row.note);
  std::string sum = xml_escaped(row.beside);
  if (!row.running.empty()) sum += "<br>" + text_tag("b", "", row.running);
  return tag("tr", "",
             "<td class=\"tick\"><span class=\"box\"></span></td>" + tag("td", "what", what) +
                 text_tag("td", "weight", row.weight) + tag("td", "sum", sum) +
                 tag("td", "lot", row.has_lot ? "<div></div>" : "")) +
         "\n";
}

/// The title, and a blank for what the empty vessel weighs.
std::string vessel_html(const WeighList& list) {
  if (list.title.empty()) return "";
  const std::string tare =
      list.tare_unit.empty()
          ? ""
          : tag("span", "tare", "empty vessel<i></i>" + xml_escaped(list.tare_unit));
  return tag("div", "vessel", text_tag("h3", "", list.title) + tare);
}

std::string column_heads(const WeighList& list) {
  const bool sums = std::any_of(list.rows.begin(), list.rows.end(),
                                [](const WeighRow& row) { return !row.running.empty(); });
  const bool lots = std::any_of(list.rows.begin(), list.rows.end(),
                                [](const WeighRow& row) { return row.has_lot; });
  return tag("tr", "head",
             "<th></th><th></th><th class=\"weight\">weigh</th><th class=\"sum\">" +
                 std::string(sums ? "running total" : "") + "</th><th class=\"lot\">" +
                 (lots ? "lot" : "") + "</th>") +
         "\n";
}

/// What keeps together stands in one part of the table.
std::string rows_html(const std::vector<WeighRow>& rows) {
  std::string all, together;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    together += row_of(rows[i]);
    if (rows[i].keeps_next && i + 1 < rows.size()) continue;
    all += tag("tbody", "together", "\n" + together);
    together.clear();
  }
  return all;
}

std::string words_html(const std::vector<SheetWords>& words) {
  std::string all;
  for (const auto& one : words) all += html(one) + "\n";
  return all;
}

/// A head of a table stands again on each page that the table goes on to.
std::string html(const WeighList& list) {
  const std::string head = vessel_html(list);
  std::string heads = column_heads(list);
  if (!list.stays_whole && !head.empty())
    heads = tag("tr", "head", "<th colspan=\"5\">" + head + "</th>") + "\n" + heads;
  constexpr std::size_t few = 6;  // rows, for which a page is turned rather than parted
  return tag("section", list.stays_whole || list.rows.size() <= few ? "whole" : "",
             "\n" + (list.stays_whole ? head + "\n" : "") + words_html(list.before) +
                 tag("table", "weigh", tag("thead", "", "\n" + heads) + rows_html(list.rows)) +
                 "\n" + words_html(list.after));
}

std::string html(const SheetCounts& counts) {
  std::string boxes;
  constexpr std::int64_t most = 200;  // boxes; more are no help
  if (counts.count <= most)
    for (std::int64_t i = 1; i <= counts.count; ++i)
      boxes += text_tag("span", "box", std::to_string(i));
  return text_tag("h3", "", counts.label + ": " + std::to_string(counts.count)) +
         tag("div", "counts", boxes);
}

std::string html(const SheetGrid& grid) {
  std::string rows;
  for (std::size_t i = 0; i < grid.rows.size(); ++i) {
    std::string cells = !grid.has_boxes ? ""
                        : i == 0        ? "<th></th>"
                                        : "<td class=\"tick\"><span class=\"box\"></span></td>";
    for (const auto& cell : grid.rows[i]) cells += text_tag(i == 0 ? "th" : "td", "", cell);
    rows += tag("tr", i == 0 ? "head" : i == grid.marked ? "marked" : "", cells) + "\n";
  }
  return tag("table", "grid", "\n" + rows);
}

std::string html(const SheetBlanks& blanks) {
  std::string rows;
  for (const auto& blank : blanks.blanks) {
    std::string what = xml_escaped(blank.what);
    if (!blank.planned.empty()) what += "<br>" + text_tag("small", "", "planned " + blank.planned);
    rows += tag("div", "blank",
                tag("div", "", what) + "<span class=\"line\"></span>" +
                    text_tag("span", "unit", blank.unit)) +
            "\n";
  }
  return tag("div", "blanks", "\n" + rows);
}

/// Without the line that only a file of its own begins with.
std::string html(const SheetDrawing& block) {
  const std::string svg = svg_of(block.drawing);
  return tag("div", "drawing", svg.substr(svg.find("<svg")));
}

/// Within a string of CSS and a style of HTML alike: what is no letter, digit or blank by its
/// number.
std::string css_escaped(const std::string& text) {
  std::string escaped;
  for (const char c : text) {
    const auto code = static_cast<unsigned char>(c);
    if (is_letter(c) || (c >= '0' && c <= '9') || c == ' ' || code >= 128)
      escaped += c;
    else
      escaped +=
          std::string("\\0000") + "0123456789abcdef"[code >> 4] + "0123456789abcdef"[code & 15];
  }
  return escaped;
}

/// What a browser prints in the margin of each page.
std::string page_style(const Sheet& sheet, std::optional<Paper> paper) {
  const std::string size = !paper ? "" : *paper == Paper::A4 ? "size: A4; " : "size: letter; ";
  const std::string type = "font: 8pt sans-serif; vertical-align: top; padding-top: 1mm; ";
  return "@page { " + size + "margin: 10mm; @bottom-left { " + type + "content: \"" +
         css_escaped(sheet.foot) + "\"; } @bottom-right { " + type +
         "content: counter(page) \" / \" counter(pages); } }";
}

}  // namespace

std::string sheet_html(const Sheet& sheet, std::optional<Paper> paper) {
  std::string body =
      text_tag("h1", "", sheet.title) + "\n" + text_tag("p", "subtitle", sheet.subtitle) + "\n";
  for (const auto& block : sheet.blocks)
    body += std::visit([](const auto& its) { return html(its); }, block) + "\n";
  body += text_tag("footer", "", sheet.foot) + "\n";
  return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
         "<meta name=\"viewport\" content=\"width=device-width\">\n" +
         text_tag("title", "", sheet.title) + "\n<style>\n" + page_style(sheet, paper) + style +
         "</style>\n</head>\n<body>\n" + body + "</body>\n</html>\n";
}

}  // namespace brimwright::reports
