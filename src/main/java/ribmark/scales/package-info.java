/** The scales of the college: the check weight put on each every morning, and whether it kept what its class permits. It refuses to know what else was weighed. */
package ribmark.scales;
