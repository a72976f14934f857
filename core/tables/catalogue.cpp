// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/tables/catalogue.hpp"

#include <QtGlobal>

namespace core {

namespace {

constexpr TableColumnForm words(const char *id, const char *title, Filled filled = Filled::Always) { return {id, title, Holds::Words, filled, "", ""}; }

constexpr TableColumnForm number(const char *id, const char *title, const char *unit, Filled filled = Filled::Always)
{
    return {id, title, Holds::Number, filled, unit, ""};
}

constexpr TableColumnForm oneOf(const char *id, const char *title, const char *choices, Filled filled = Filled::Always) { return {id, title, Holds::OneOf, filled, "", choices}; }

} // namespace

const std::vector<TableForm> &tableForms()
{
    static const std::vector<TableForm> all = {
        {"thread_torque",
         QT_TRANSLATE_NOOP("Tables", "Torque of nuts by thread"),
         QT_TRANSLATE_NOOP("Tables", "General values for cadmium-plated threads free of oil, where the maker gives none. The drag of a self-locking nut is not in "
                                     "them."),
         {oneOf("series", QT_TRANSLATE_NOOP("Tables", "Thread series"), "fine|coarse"),
          words("thread_size", QT_TRANSLATE_NOOP("Tables", "Thread size")),
          number("tension_least", QT_TRANSLATE_NOOP("Tables", "Tension nut, least"), "lbf·in"),
          number("tension_most", QT_TRANSLATE_NOOP("Tables", "Tension nut, most"), "lbf·in"),
          number("shear_least", QT_TRANSLATE_NOOP("Tables", "Shear nut, least"), "lbf·in"),
          number("shear_most", QT_TRANSLATE_NOOP("Tables", "Shear nut, most"), "lbf·in"),
          oneOf("shear_is_estimated", QT_TRANSLATE_NOOP("Tables", "Shear band is estimated"), "yes|no"),
          number("tension_greatest", QT_TRANSLATE_NOOP("Tables", "Tension nut, never over"), "lbf·in"),
          number("shear_greatest", QT_TRANSLATE_NOOP("Tables", "Shear nut, never over"), "lbf·in")}},
        {"locknut_drag",
         QT_TRANSLATE_NOOP("Tables", "Least drag of a self-locking nut that is used again"),
         QT_TRANSLATE_NOOP("Tables", "The torque that turns the nut before it seats. The source begins at 7/16 in and says nothing of smaller sizes. What "
                                     "a nut needs to break away is another quantity."),
         {oneOf("series", QT_TRANSLATE_NOOP("Tables", "Thread series"), "fine|coarse"),
          words("thread_size", QT_TRANSLATE_NOOP("Tables", "Thread size")),
          number("drag_least", QT_TRANSLATE_NOOP("Tables", "Drag, least"), "lbf·in")}},
        {"torque_tool_deviation",
         QT_TRANSLATE_NOOP("Tables", "How far a torque tool may be off"),
         QT_TRANSLATE_NOOP("Tables", "In per cent of the reading, by the greatest torque of the tool. What the tool's own certificate says comes first."),
         {words("tool", QT_TRANSLATE_NOOP("Tables", "Tool")),
          number("above", QT_TRANSLATE_NOOP("Tables", "Greatest torque above"), "N·m", Filled::OrEmpty),
          number("up_to", QT_TRANSLATE_NOOP("Tables", "Greatest torque up to"), "N·m", Filled::OrEmpty),
          number("deviation", QT_TRANSLATE_NOOP("Tables", "Deviation, at most"), "%"),
          words("lowest_point", QT_TRANSLATE_NOOP("Tables", "Lowest point that is tested"), Filled::OrEmpty)}},
        {"lockwire_twists",
         QT_TRANSLATE_NOOP("Tables", "Twists of lockwire"),
         QT_TRANSLATE_NOOP("Tables", "One twist is half a turn. Sources differ, for the ends of the wire as well."),
         {number("wire_least", QT_TRANSLATE_NOOP("Tables", "Wire diameter from"), "in"), number("wire_most", QT_TRANSLATE_NOOP("Tables", "Wire diameter to"), "in"),
          number("twists_least", QT_TRANSLATE_NOOP("Tables", "Twists in an inch, least"), "1/in"),
          number("twists_most", QT_TRANSLATE_NOOP("Tables", "Twists in an inch, most"), "1/in")}},
        {"lockwire_wire",
         QT_TRANSLATE_NOOP("Tables", "Smallest lockwire by the hole"),
         QT_TRANSLATE_NOOP("Tables", "Wire is new each time, and pulls in the direction of tightening."),
         {number("hole_above", QT_TRANSLATE_NOOP("Tables", "Hole above"), "in", Filled::OrEmpty),
          number("hole_from", QT_TRANSLATE_NOOP("Tables", "Hole from"), "in", Filled::OrEmpty),
          number("hole_up_to", QT_TRANSLATE_NOOP("Tables", "Hole up to"), "in", Filled::OrEmpty),
          number("wire_least", QT_TRANSLATE_NOOP("Tables", "Wire diameter, least"), "in"),
          words("only_when", QT_TRANSLATE_NOOP("Tables", "Only when"))}},
        {"bonding_limits",
         QT_TRANSLATE_NOOP("Tables", "Bonding resistance"),
         QT_TRANSLATE_NOOP("Tables", "A limit and its comparison belong together: at most 3 and less than 3 are two limits. Read with four wires, at a bond "
                                     "that is complete; isolate electrical power first."),
         {words("what", QT_TRANSLATE_NOOP("Tables", "Between")), oneOf("comparison", QT_TRANSLATE_NOOP("Tables", "Comparison"), "at most|less than"),
          number("limit", QT_TRANSLATE_NOOP("Tables", "Limit"), "mΩ")}},
        {"sling_angles",
         QT_TRANSLATE_NOOP("Tables", "Slings at an angle"),
         QT_TRANSLATE_NOOP("Tables", "Some charts count from the vertical, some print sin for 1/sin: mind which. The working load limit is on the tag of the "
                                     "sling, in no table. Nobody stands under a load."),
         {number("angle_from_horizontal", QT_TRANSLATE_NOOP("Tables", "Angle from the horizontal"), "°"),
          number("angle_from_vertical", QT_TRANSLATE_NOOP("Tables", "Angle from the vertical"), "°"),
          number("tension_factor", QT_TRANSLATE_NOOP("Tables", "Tension factor (1/sin)"), "", Filled::OrEmpty),
          number("capacity_factor", QT_TRANSLATE_NOOP("Tables", "Capacity factor (sin)"), "", Filled::OrEmpty)}},
        {"leak_classes",
         QT_TRANSLATE_NOOP("Tables", "Classes of fuel and fluid leaks"),
         QT_TRANSLATE_NOOP("Tables", "The schemes call different leaks by one name. Always name the scheme beside the class. Fuel burns: no flame, no spark, "
                                     "fire cover as the local rules ask."),
         {words("scheme", QT_TRANSLATE_NOOP("Tables", "Scheme")), number("order", QT_TRANSLATE_NOOP("Tables", "Order, least first"), ""),
          words("class", QT_TRANSLATE_NOOP("Tables", "Class")), number("above", QT_TRANSLATE_NOOP("Tables", "Size from"), "in", Filled::OrEmpty),
          oneOf("above_edge", QT_TRANSLATE_NOOP("Tables", "The lower size itself"), "included|excluded", Filled::OrEmpty),
          number("up_to", QT_TRANSLATE_NOOP("Tables", "Size to"), "in", Filled::OrEmpty),
          oneOf("up_to_edge", QT_TRANSLATE_NOOP("Tables", "The upper size itself"), "included|excluded", Filled::OrEmpty),
          words("size_is", QT_TRANSLATE_NOOP("Tables", "Size is"), Filled::OrEmpty),
          words("observation_time", QT_TRANSLATE_NOOP("Tables", "Watched for"), Filled::OrEmpty),
          words("criterion", QT_TRANSLATE_NOOP("Tables", "Or told by"), Filled::OrEmpty)}},
        {"tightening_passes",
         QT_TRANSLATE_NOOP("Tables", "Passes of tightening"),
         QT_TRANSLATE_NOOP("Tables", "In per cent of the final torque. From flanges and pipes; an aircraft's own passes are in its maintenance data."),
         {words("scheme", QT_TRANSLATE_NOOP("Tables", "Scheme")), number("pass", QT_TRANSLATE_NOOP("Tables", "Pass"), ""),
          number("target_least", QT_TRANSLATE_NOOP("Tables", "Target, least"), "%"), number("target_most", QT_TRANSLATE_NOOP("Tables", "Target, most"), "%"),
          words("pattern", QT_TRANSLATE_NOOP("Tables", "Pattern"))}},
        {"weight_change",
         QT_TRANSLATE_NOOP("Tables", "Change of weight that is negligible"),
         QT_TRANSLATE_NOOP("Tables", "Of the empty weight, by what the aircraft weighs empty. The source has no band for exactly 5000 lb and 50000 lb."),
         {number("empty_weight_above", QT_TRANSLATE_NOOP("Tables", "Empty weight above"), "lb", Filled::OrEmpty),
          number("empty_weight_below", QT_TRANSLATE_NOOP("Tables", "Empty weight below"), "lb", Filled::OrEmpty),
          number("change_most", QT_TRANSLATE_NOOP("Tables", "Change, at most"), "lb")}},
    };
    return all;
}

} // namespace core
