// Runs while the modules are still on their way. The first figure and the first date that a browser writes in
// the reader's language take long, for it reads its tables of languages then.
new Intl.NumberFormat().format(0);
new Intl.DateTimeFormat().format(0);
