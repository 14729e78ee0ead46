/**
 * The college's own cutting tests: what a competent butcher's carcases came to, and the tables they move. It refuses to know how a
 * weigh-up is reckoned; it is told the percent of each cut.
 */
package ribmark.cuttingtests;
