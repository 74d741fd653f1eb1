package rindward.dashboard;

import rindward.dashboard.rooms.RoomsDesk;
import rindward.dashboard.signin.SignInDesk;

/** What the pages ask of the controller, one desk a page. */
public record Desks(RoomsDesk rooms, SignInDesk signIn) {}
