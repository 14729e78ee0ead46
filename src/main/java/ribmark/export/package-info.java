/**
 * The progress report as page and as file, and the record of who took it. It refuses to judge: standings and counts come ready
 * from those who derive them.
 */
package ribmark.export;
