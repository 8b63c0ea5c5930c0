/** What the server and its page say of themselves, which has nothing to do with an extension. */
const noise = [
  /^(Resolv(ing|ed) connection token|Creating a socket|(Updating|Ignoring fetching) additional builtin)/,
  /^(Creation of workbench contribution|ChatSessionStore)/,
  /service-?\s?worker|when fetching the script|extensions? gallery|vsda/i,
  // Some of the server's optional and native modules are not installed.
  /spdlog|watchdog|status of 404 .*\/static\/node_modules\//,
];

/** Whether a line of the page's console is of that kind. */
export const isNoise = (line) => noise.some((pattern) => pattern.test(line));
