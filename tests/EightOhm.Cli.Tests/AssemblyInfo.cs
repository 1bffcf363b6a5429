// Formatters, the console and the current folder belong to the whole process.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
