using Cablewright.Service;
using Cablewright.Service.Assessments;
using Cablewright.Service.Commands;
using Cablewright.Service.Documents;
using Cablewright.Service.Hosting;
using Cablewright.Service.Problems;
using Cablewright.Service.Site;

if (ServiceCommands.Knows(args)) return await ServiceCommands.Run(args);
WebApplication app = ServiceHost.Build(args);
app.MapOperations();
ProblemPages.Map(app);
app.MapContract();
app.MapSite();
SheetStyles.Map(app);

app.Run();
return 0;
