"""One document object for each stage of the job."""
