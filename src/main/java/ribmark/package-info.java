/** The whole program wired by hand: open {@link ribmark.App} first. */
package ribmark;
