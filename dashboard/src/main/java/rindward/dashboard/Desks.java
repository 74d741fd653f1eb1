package rindward.dashboard;

import rindward.dashboard.rooms.RoomsDesk;

/** What the pages ask of the controller, one desk a page. */
public record Desks(RoomsDesk rooms) {}
