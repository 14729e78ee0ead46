/** Yield and trim judged against reference tables. It refuses to know where a weight was typed, who cut, and any file, table of the database or page. */
package ribmark.scoring;
