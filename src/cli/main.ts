process.stdout.write('leastcut\n');
