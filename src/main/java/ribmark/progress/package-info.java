/**
 * Where each apprentice and each group stands, derived anew each time it is shown. It refuses to keep anything and to sign for
 * anybody.
 */
package ribmark.progress;
