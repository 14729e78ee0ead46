/**
 * The skeleton as a graph of bones and what holds them, and which pieces come free when it is severed, sawn or lifted
 * apart. It knows no file, no page, no table, no name of a cut, and not one bone: those come with the data.
 *
 * <p>The rules of sawing (what is near and far, what happens to the hold between two bones when one is sawn) are a
 * modelling choice, ours; no publication lays them down.
 */
package ribmark.anatomy;
