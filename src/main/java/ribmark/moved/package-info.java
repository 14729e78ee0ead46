/** A line cut elsewhere than it should be: where each bone ended up, compared with where it belongs. */
package ribmark.moved;
