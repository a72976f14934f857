// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDate>
#include <QHash>
#include <QString>

#include <map>
#include <optional>
#include <set>
#include <vector>

#include "core/job/accessory.hpp"
#include "core/job/blanks.hpp"
#include "core/job/hardware.hpp"
#include "core/job/break_point.hpp"
#include "core/job/condition.hpp"
#include "core/job/hold_point.hpp"
#include "core/job/job_test.hpp"
#include "core/job/job_tools.hpp"
#include "core/job/link.hpp"
#include "core/job/list_index.hpp"
#include "core/job/listed.hpp"
#include "core/job/mark.hpp"
#include "core/job/tags.hpp"
#include "core/job/reinspection.hpp"
#include "core/job/revision.hpp"
#include "core/job/struck.hpp"
#include "core/job/temporary.hpp"
#include "core/job/unit.hpp"
#include "core/job/unlisted.hpp"
#include "core/job/untouched.hpp"
#include "core/ledger/entry.hpp"
#include "core/measure/bonding.hpp"
#include "core/measure/leak.hpp"
#include "core/measure/torque_wrench.hpp"
#include "core/value/quantity.hpp"
#include "core/value/series.hpp"

namespace core {

struct Removal {
    Mark mark;
    QString asFound; ///< condition when it was undone
    QString tag;
    qint64 blanksFitted = 0; ///< to the aircraft's end
    bool foundOpen = false; ///< nobody logged the disconnection
    std::vector<HardwareRemoved> hardware{};
    qint64 unitBlanksFitted = 0; ///< to the end that goes with the unit
    std::vector<MissingBlanks> blanksMissing{};
    bool operator==(const Removal &) const = default;
};

struct Restoration {
    Mark mark;
    QString tagRecovered;
    qint64 blanksRemoved = 0; ///< from the aircraft's end
    QString sealPart;
    QString sealBatch;
    QString aircraftHalf;
    QString unitHalf;
    std::vector<HardwareUse> hardware{};
    qint64 unitBlanksRemoved = 0;
    std::set<PersonId> joinedBy{}; ///< who joined it, helped or supervised, or loosened it since
    bool operator==(const Restoration &) const = default;
};

struct TorqueReading {
    Mark mark;
    qint64 fastener; ///< from 1
    Quantity value;  ///< as the tool showed it
    ToolId tool;
    qint64 pass = 1; ///< from 1
    std::optional<measure::Lever> lever{}; ///< the adapter between tool and fastener
    std::optional<Quantity> setting{};     ///< what the wrench was set to
    std::optional<Quantity> drag{};        ///< of a self-locking nut, while it was run down
    bool operator==(const TorqueReading &) const = default;
};

struct BondingReading {
    Mark mark;
    Quantity value;
    ToolId tool;
    std::optional<Quantity> second{};   ///< with the leads the other way round
    std::optional<Quantity> leadZero{}; ///< what the leads alone showed
    bool operator==(const BondingReading &) const = default;
};

struct LeakReading {
    Mark mark;
    QString leakClass;            ///< worked out from what was seen where the scheme has sizes, else as told
    std::optional<Quantity> rate; ///< a flow, or counted drops
    QString how;
    std::optional<Decimal> dropsPerMillilitre{}; ///< by which drops were turned into a flow
    std::optional<Quantity> size{};              ///< across the wet area; 0 is dry
    std::optional<measure::Flow> flow{};
    std::optional<qint64> minutes{}; ///< from wiping dry to looking
    bool operator==(const LeakReading &) const = default;
};

struct Safetying {
    Mark mark;
    QString method;
    bool operator==(const Safetying &) const = default;
};

struct Rejection {
    Mark mark;
    QString reason;
    bool operator==(const Rejection &) const = default;
};

/// What somebody on the walk-round found to hold an item that was logged as disconnected.
struct StillAttached {
    Mark mark;
    QString what;
    bool operator==(const StillAttached &) const = default;
};

/// A numbered place on a photo, and what to look at there. Places are thousandths of the width and the height of the picture as it is looked at, upright,
/// from its upper left corner.
struct PhotoMark {
    Mark mark;
    qint64 number; ///< from 1, one mark each on a photo
    qint64 across;
    qint64 down;
    QString what;
    bool operator==(const PhotoMark &) const = default;
};

struct Photo {
    Mark mark;
    Digest digest;
    QString mediaType;
    QString caption;
    QString moment; ///< `before`, `after`, `other`
    std::optional<Digest> copyOf{}; ///< the file that it was made from, which is kept elsewhere
    std::vector<PhotoMark> marks{}; ///< in the order of their entries
    bool operator==(const Photo &) const = default;
};

/// An interface as the entries leave it. What is empty has not been shown since the item was last undone.
struct InterfaceState {
    Listing listed;
    Mark listedBy;
    std::optional<Removal> removal;         ///< the last one
    std::optional<Restoration> restoration; ///< since the last removal
    std::vector<TorqueReading> torque;
    std::optional<BondingReading> bonding;
    std::optional<Safetying> safetying;
    std::optional<LeakReading> leak;
    std::vector<Mark> acceptances;
    std::optional<Rejection> rejection; ///< the last one, until the item is accepted again
    std::optional<Mark> disturbed;      ///< the last disturbance
    std::set<PersonId> actors;          ///< all who had a hand in it, over all shifts
    std::set<PersonId> torqueTakenOverBy; ///< who accepted another's marked fasteners by signature
    std::vector<Photo> photos;
    std::optional<Mark> walkedRound;            ///< who confirmed it free since it was undone
    std::optional<StillAttached> stillAttached; ///< until it is freed
    std::vector<ConditionStated> conditions{};     ///< that stand, in the order of their entries
    std::optional<Mark> settled{};                 ///< the last condition that was cleared, or correction of its listing
    std::optional<BreakPoint> stopped{};           ///< until somebody works on it again
    std::optional<Unlisted> unlisted{};            ///< it was on no list when it was undone
    std::optional<Mark> undisturbed{};             ///< who looked at it and found it untouched
    std::optional<NotApplicable> notApplicable{};
    std::optional<Mark> twinsVerified{};           ///< the halves of its twin group were read against each other
    std::vector<Reinspection> reinspections{};     ///< beside acceptances
    std::optional<Mark> toLookUp{};                ///< what is asked of it may be another by a new revision, until its listing is corrected or confirmed
    std::optional<Sent> sent{};                    ///< it was given over to a linked job
    std::optional<TakenOn> takenOn{};              ///< it came from one
    LeftByStrikes left{};                          ///< by entries about it that do not count any more
    bool operator==(const InterfaceState &) const = default;
};

/// Undone, and not joined since.
inline bool isOff(const InterfaceState &item) { return item.removal && !item.restoration; }

/// Open, with a tag on it.
inline bool carriesTag(const InterfaceState &item) { return isOff(item) && !item.removal->tag.isEmpty(); }

struct Finding {
    FindingId id;
    Mark raised;
    std::optional<InterfaceId> item;
    QString description;
    std::optional<Mark> closed;
    QString disposition; ///< `rectified`, `within limits`, `deferred`; empty while open
    QString authority;   ///< reference of who or what allowed it
    QString remarks;
    QDate limit{};                ///< until which it may be deferred
    std::vector<Photo> photos{};
    bool operator==(const Finding &) const = default;
};

struct Handover {
    Mark given;
    PersonId to;
    std::vector<PersonId> crew; ///< the incoming crew
    std::optional<Mark> accepted;
    QString remarks;
    std::optional<Mark> refused{}; ///< by the incoming lead, who then does not lead
    QString refusedBecause{};
    bool operator==(const Handover &) const = default;
};

/// Something that may be due after closure: a torque to be checked again after some hours, a look after the first flight. Whether it was done
/// is said in this job while it is open, else in the job that it is done in.
struct FollowUp {
    Mark mark;
    QString text;
    QDate due;
    std::optional<InterfaceId> item;
    std::optional<Mark> done;
    bool operator==(const FollowUp &) const = default;
};

struct Zone {
    QString name;
    std::optional<PersonId> technician;
    bool operator==(const Zone &) const = default;
};

/// A lift, a servicing or a weight change as it was signed: what it came to is worked out again from the entry.
struct JobFigure {
    Mark mark;
    QString kind;
    json::Object body;
    bool operator==(const JobFigure &) const = default;
};

/// What the job was opened with. The revision stays until somebody signs another.
struct JobFacts {
    QString title;
    QString workOrder;
    QString aircraft;
    QString aircraftType;
    QString maintenanceData;
    QString revision;
    QString unit;
    QString outgoingSerial;
    QString incomingSerial;
    QString follows; ///< the closed job that this one goes on from
    std::vector<Zone> zones;
    bool acceptsGuarded = false;      ///< readings nearer to an edge than the tool's deviation are refused
    bool maySkipFasteners = false;    ///< out of their order, with a reason
    bool mayReinspect = false;        ///< a person may inspect their own work again where nobody else is there
    qint64 reinspectionPause = 0;     ///< minutes between the work and that
    measure::LeakScheme leakScheme{}; ///< by which leaks are classed; without classes where the job names none
    bool operator==(const JobFacts &) const = default;
};

/// Whether an entry counts.
enum class Standing {
    Stands,
    Struck, ///< a later entry names it and says why
    Fallen, ///< what it rested on was struck
};

/// One entry as the job remembers it, so that a later one can name it.
struct Line {
    qint64 seq;
    QString kind;
    std::optional<QString> subject;
    PersonId author;
    Instant at;
    Standing standing;
    std::optional<qint64> struckBy;
    bool ofTheCrew; ///< the author was of the crew or its lead at that moment; else they spoke as an inspector
    bool operator==(const Line &) const = default;
};

/// One job: the fold of its ledger. A copy is cheap and independent.
struct JobState {
    std::optional<LedgerId> ledger;
    std::optional<Mark> opened;
    JobFacts facts;
    std::optional<PersonId> lead;
    std::set<PersonId> crew;
    Series<InterfaceState> items;         ///< in the order of the list
    QHash<InterfaceId, qsizetype> itemAt; ///< index into items
    ListIndex index;                      ///< which rows name which others
    QHash<QString, InterfaceId> tagAt;    ///< every tag ever hung, so that none is used twice
    std::vector<Finding> findings;
    std::vector<Handover> handovers;
    std::vector<TemporaryItem> temporaries; ///< in the order in which they were applied
    std::vector<HoldPoint> holds;           ///< in the order in which they were set
    std::vector<FollowUp> followUps; ///< in the order of their entries
    std::vector<Accessory> accessories; ///< in the order of their listing
    std::optional<Mark> reversed; ///< the change was given up: the outgoing unit goes back on
    UnitChange unit;
    std::vector<JobTest> tests; ///< in the order of their entries
    TagControl tags;
    ToolControl tools;
    std::vector<Revision> revisions;       ///< of the maintenance data, since the job was opened
    std::vector<FindingId> blanksMissed;   ///< each says of a blank that is missing; they stand though its undoing is struck
    std::vector<TimeInDoubt> timesInDoubt; ///< in the order of their entries
    std::vector<JobFigure> figures; ///< lifts, servicing, weight, in the order of their entries
    std::vector<Link> links; ///< in the order of their entries
    SeenJobs others;         ///< not folded: given by whoever keeps the ledgers, see JobFold::see
    std::optional<Mark> closed;
    std::optional<Instant> lastAt;
    Series<Line> lines;       ///< line n holds sequence number n+1
    Series<Statement> said;   ///< all that was said, in order: what a strike would leave is folded from it
    std::map<InterfaceId, LeftByStrikes> leftWithoutItem; ///< of interfaces whose listing was struck
    std::optional<Mark> unitOffStruck; ///< the unit was said to be off, which was struck, and not said anew since
    QHash<InterfaceId, std::vector<InterfaceId>> dependents; ///< which interfaces the list says to depend on one
    qint64 shippingBlanksStruck = 0; ///< the most that was counted on the incoming unit and struck since

    const InterfaceState *item(const InterfaceId &id) const;
    /// The same, to be changed.
    InterfaceState *item(const InterfaceId &id);
    const Finding *finding(const FindingId &id) const;
    const TemporaryItem *temporary(const TemporaryId &id) const;
    TemporaryItem *temporary(const TemporaryId &id);
    const Accessory *accessory(const AccessoryId &id) const;
    Accessory *accessory(const AccessoryId &id);
    const HoldPoint *hold(const HoldId &id) const;
    HoldPoint *hold(const HoldId &id);
    /// The handover that waits for its acceptance, or nullptr.
    const Handover *pendingHandover() const;
    bool operator==(const JobState &) const = default;
};

/// The item was said to be undone after it was last really so, in an entry that does not count any more: what is inside it nobody knows.
inline bool isUndoingInQuestion(const InterfaceState &item) { return item.left.undoing && item.removal && item.left.undoing->seq > item.removal->mark.seq; }

/// Who signs as a member of the crew, not as an inspector from outside it.
inline bool isOfTheCrew(const JobState &job, const PersonId &person) { return job.crew.contains(person) || job.lead == person; }

} // namespace core
