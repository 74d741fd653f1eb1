package rindward.dashboard;

import rindward.dashboard.alarms.AlarmsDesk;
import rindward.dashboard.lots.LotsDesk;
import rindward.dashboard.placards.SquareDesk;
import rindward.dashboard.rooms.ClimateDesk;
import rindward.dashboard.rooms.RoomsDesk;
import rindward.dashboard.shed.RecordDesk;
import rindward.dashboard.shed.ShedDesk;
import rindward.dashboard.signin.SignInDesk;
import rindward.dashboard.tastings.TastingsDesk;
import rindward.dashboard.varieties.VarietiesDesk;

/** What the pages ask of the controller, one desk a page. */
public record Desks(
    RoomsDesk rooms,
    ClimateDesk climate,
    LotsDesk lots,
    TastingsDesk tastings,
    VarietiesDesk varieties,
    ShedDesk shed,
    RecordDesk record,
    AlarmsDesk alarms,
    SquareDesk squares,
    SignInDesk signIn) {}
