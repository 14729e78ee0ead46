/** Opens the database safely, brings its tables up to date, and hands out transactions. It knows no part of the trade. */
package ribmark.database;
