package rindward.dashboard.signin;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import rindward.dashboard.request.JsonBody;

/** The routes by which the owner says who may do what, and reads who did what. */
public final class PeopleRoutes {
  private static final int MOST_ENTRIES = 200;

  private final SignIn signIn;
  private final SignInDesk desk;

  private PeopleRoutes(SignIn signIn, SignInDesk desk) {
    this.signIn = signIn;
    this.desk = desk;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, SignIn signIn, SignInDesk desk) {
    PeopleRoutes own = new PeopleRoutes(signIn, desk);
    routes.get("/api/people", own::people, Access.OWNER);
    routes.put("/api/people/{name}", own::change, Access.OWNER);
    routes.delete("/api/people/{name}", own::remove, Access.OWNER);
    routes.get("/api/audit", own::audit, Access.OWNER);
  }

  private void people(Context ctx) {
    ctx.json(signIn.people().all().stream().map(PersonView::of).toList());
  }

  private void change(Context ctx) {
    PersonRequest request = JsonBody.read(ctx, PersonRequest.class);
    Role role = Role.of(request.role());
    Person person = signIn.people().change(ctx.pathParam("name"), role, request.password());
    String also = request.password() == null ? "" : ", with a new password";
    Gate.done(ctx, "made " + person.name() + " " + role.word() + also);
    ctx.json(PersonView.of(person));
  }

  private void remove(Context ctx) {
    String name = ctx.pathParam("name");
    signIn.people().remove(name);
    Gate.done(ctx, "removed " + name);
    ctx.status(204);
  }

  private void audit(Context ctx) {
    long before = number(ctx, "before", Long.MAX_VALUE);
    int size = (int) Math.min(MOST_ENTRIES, number(ctx, "size", 50));
    ctx.json(desk.audit(before, size));
  }

  private static long number(Context ctx, String name, long otherwise) {
    String text = ctx.queryParam(name);
    if (text == null) {
      return otherwise;
    }
    try {
      long number = Long.parseLong(text);
      if (number > 0) {
        return number;
      }
    } catch (NumberFormatException e) {
      // Said below.
    }
    throw new BadRequestResponse(name + " was '" + text + "' but it must be a number above zero.");
  }
}
